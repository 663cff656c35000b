import { Argument, Command, Option } from 'commander';
import { jobJsonSchema, rubricJsonSchema, sessionJsonSchema, workshopJsonSchema } from '../../sim/index.ts';
import { debrief, type DebriefOptions } from './debrief.ts';
import { demo } from './demo.ts';
import { demonstrate, type DemonstrateOptions } from './demonstrate.ts';
import { drill, type DrillOptions } from './drill.ts';
import { EXIT } from './exitCodes.ts';
import { FIELD_NAMES } from './filmFiles.ts';
import type { Io } from './io.ts';
import { plan, type PlanOptions } from './plan.ts';
import { spray, type SprayOptions } from './spray.ts';
import { addPlanning } from './programPlan.ts';
import { addRecord } from './programRecord.ts';
import { addSetUps } from './programSetUps.ts';
import { unitsOption } from './sharedOptions.ts';
import { workshop, type WorkshopOptions } from './workshop.ts';

const EPILOGUE = `
Try it:
  crosscoat demo > demo.json
  crosscoat demo --strokes > session.csv
  crosscoat spray demo.json --coat planned --map film.png
  crosscoat spray demo.json --strokes session.csv
  crosscoat spray demo.json --coat planned --until 15min --at 1min,5min
  crosscoat today --temp 21C --rh 60%
  crosscoat air --temp 21C --rh 65%
  crosscoat mix --cup ford4 --seconds 36
  crosscoat mix --ratio 4:1 --pot 2L
  crosscoat vapour --solvent toluene --litres 1 --room 120m3
  crosscoat scheme demo.json
  crosscoat amounts demo.json
  crosscoat days demo.json --late clear-3=2h --ics days.ics
  crosscoat sheet demo.json --html card.html
  crosscoat demonstrate stop --knob 0.3
  crosscoat drill half-overlap
  crosscoat drill half-overlap --job > half.json
  crosscoat plan half.json --out strokes.csv
  crosscoat debrief --strokes strokes.csv --drill half-overlap
  crosscoat compare demo.json --setups low-pressure,conventional --report set-ups.html
  crosscoat window demo.json --x distance --y speed --map window.png
  crosscoat hands demo.json --count 200 --seed 1
  crosscoat fit demo.json --dry 45um --coats 3
  crosscoat card readings.csv
  crosscoat survey readings.csv --rule iso19840 --nominal 100um
  crosscoat survey --plan --area 2800ft2 --rule pa2
  crosscoat report demo.json --html record.html --canonical job.canonical.json

A job or session name of - reads standard input. Exit codes: 0 done, 1 --strict was given and
the film has faults or the session is not passed, 2 bad input. Every figure is a teaching and
planning estimate.`;

/** What `crosscoat schema` prints, by the file's kind. */
const SCHEMAS = { job: jobJsonSchema, session: sessionJsonSchema, rubric: rubricJsonSchema, workshop: workshopJsonSchema } as const;

/** The command and its options; `finish` is given the exit code of what ran. */
export function makeProgram(io: Io, finish: (code: number) => void): Command {
  const program = new Command('crosscoat')
    .description('Lay a coat in the computer: from a gun set-up and its strokes to the film, its faults, their causes and cures.')
    .addHelpText('after', EPILOGUE)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void io.out(text),
      writeErr: (text) => io.err(text),
      outputError: (text, write) => write(text.replace(/^error: /, 'crosscoat: ')),
    });
  addSpray(program, io, finish);
  addPlan(program, io, finish);
  addPlanning(program, io, finish);
  addSetUps(program, io, finish);
  addDemonstrate(program, io, finish);
  addDrill(program, io, finish);
  addDebrief(program, io, finish);
  addRecord(program, io, finish);
  addWorkshop(program, io, finish);
  program
    .command('schema')
    .description('print the JSON Schema of the job file, or of a session or rubric file, or of a workshop\'s manifest')
    .addArgument(new Argument('[file]', 'which file').choices(Object.keys(SCHEMAS)).default('job'))
    .action(async (file: keyof typeof SCHEMAS) => {
      await io.out(`${JSON.stringify(SCHEMAS[file](), null, 2)}\n`);
      finish(EXIT.done);
    });
  program
    .command('demo')
    .description('print the demo job')
    .option('--strokes', 'print its recorded session as CSV instead')
    .action(async (options: { strokes?: true }) => finish(await demo(io, options)));
  return program;
}

function addSpray(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('spray')
    .description("lay a job's coats and judge the film")
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--strokes <file>', 'recorded strokes (CSV or trajectory text) that lay the coat in place of its plan; without --coat the one coat that a recording lays already, else the first')
    .option('--coat <id>', 'only this coat')
    .option('--cell <size>', "side of a grid cell, 1mm to 10mm, in place of the job's")
    .option('--until <time>', 'watch the film so long from the first row of the path, such as 10min: drying, runs, peel, blush, blisters')
    .option('--at <times>', 'figures of the film at these times, such as 30s,2min,10min')
    .option('--map <file>', 'write the film map, PNG')
    .addOption(new Option('--field <name>', 'what the map shows').choices(FIELD_NAMES).default('film'))
    .option('--film <file>', 'write the film, CSV, one row a cell')
    .option('--svg <file>', 'write the strokes and fault zones to scale, SVG')
    .addOption(unitsOption())
    .option('--no-cures', 'do not try cures (quicker)')
    .option('--strict', 'exit code 1 where the film has faults')
    .option('--json', 'print one JSON object in place of the report')
    .action(async (job: string, options: SprayOptions) => finish(await spray(io, job, options)));
}

function addPlan(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('plan')
    .description("plan a job's strokes without spraying")
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--coat <id>', 'only this coat')
    .option('--out <file>', 'write the planned strokes as a recording, CSV')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the table')
    .action(async (job: string, options: PlanOptions) => finish(await plan(io, job, options)));
}

function addDemonstrate(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('demonstrate')
    .description('list the demonstrations, or run one: a coat with one thing wrong beside the same coat cured')
    .argument('[name]', 'which one; all are listed without it')
    .option('--knob <value>', 'the thing that is wrong, in its unit; without it the value that shows the fault')
    .option('--at <times>', 'figures at these times too, such as 30s,2min')
    .option('--job', 'print the wrong side as a job file instead')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the report')
    .action(async (name: string | undefined, options: DemonstrateOptions) => finish(await demonstrate(io, name, options)));
}

function addDrill(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('drill')
    .description('list the drills, or say what one asks for')
    .argument('[drill]', 'which one, by its id or number; all are listed without it')
    .option('--job', 'print its job file instead')
    .addOption(unitsOption())
    .option('--json', 'print JSON in place of the text')
    .action(async (name: string | undefined, options: DrillOptions) => finish(await drill(io, name, options)));
}

function addDebrief(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('debrief')
    .description('look a practice session through: what to fix first, its mark, the planned film beside it, what each habit cost')
    .argument('[session]', 'session file (*.crosscoat-session.json), or - for standard input')
    .option('--strokes <file>', 'recorded strokes (CSV or trajectory text) in place of a session file')
    .option('--drill <drill>', 'what the strokes were sprayed for: a drill, by its id or number')
    .option('--job <file>', 'what the strokes were sprayed for: a coat of this job')
    .option('--coat <id>', "which coat of --job; not needed where it has only one")
    .option('--rubric <file>', 'mark by this rubric (JSON) in place of the usual one')
    .option('--no-what-if', 'do not spray again without each habit (quicker)')
    .addOption(unitsOption())
    .option('--strict', 'exit code 1 where the session is not passed')
    .option('--json', 'print one JSON object in place of the text')
    .action(async (session: string | undefined, options: DebriefOptions) => finish(await debrief(io, session, options)));
}

function addWorkshop(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('workshop')
    .description('list and check a workshop that the app exported: its jobs and sessions, which were changed since, which cannot be read')
    .argument('<zip>', 'the zip; it is only read')
    .option('--strict', 'exit code 1 where a file was changed, is damaged, is not listed (a zip without a manifest lists none) or cannot be read')
    .option('--json', 'print one JSON object in place of the list')
    .action(async (zip: string, options: WorkshopOptions) => finish(await workshop(io, zip, options)));
}
