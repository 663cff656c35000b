import { Argument, Command, Option } from 'commander';
import { jobJsonSchema, rubricJsonSchema, sessionJsonSchema } from '../../sim/index.ts';
import { air, type AirOptions } from './air.ts';
import { card, type CardOptions } from './card.ts';
import { compare, type CompareCliOptions } from './compare.ts';
import { debrief, type DebriefOptions } from './debrief.ts';
import { demo } from './demo.ts';
import { demonstrate, type DemonstrateOptions } from './demonstrate.ts';
import { drill, type DrillOptions } from './drill.ts';
import { EXIT } from './exitCodes.ts';
import { FIELD_NAMES } from './filmFiles.ts';
import { fit, type FitOptions } from './fit.ts';
import { hands, type HandsCliOptions } from './hands.ts';
import type { Io } from './io.ts';
import { plan, type PlanOptions } from './plan.ts';
import { spray, type SprayOptions } from './spray.ts';
import { window, type WindowOptions } from './window.ts';

const EPILOGUE = `
Try it:
  crosscoat demo > demo.json
  crosscoat demo --strokes > session.csv
  crosscoat spray demo.json --coat planned --map film.png
  crosscoat spray demo.json --strokes session.csv
  crosscoat spray demo.json --coat planned --until 15min --at 1min,5min
  crosscoat air --temp 21C --rh 65%
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

A job or session name of - reads standard input. Exit codes: 0 done, 1 --strict was given and
the film has faults or the session is not passed, 2 bad input. Every figure is a teaching and
planning estimate.`;

/** What `crosscoat schema` prints, by the file's kind. */
const SCHEMAS = { job: jobJsonSchema, session: sessionJsonSchema, rubric: rubricJsonSchema } as const;

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
  addAir(program, io, finish);
  addDemonstrate(program, io, finish);
  addCard(program, io, finish);
  addCompare(program, io, finish);
  addWindow(program, io, finish);
  addHands(program, io, finish);
  addFit(program, io, finish);
  addDrill(program, io, finish);
  addDebrief(program, io, finish);
  program
    .command('schema')
    .description('print the JSON Schema of the job file, or of a session or rubric file')
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

function unitsOption(): Option {
  return new Option('--units <system>', 'units of the report').choices(['metric', 'us']).default('metric');
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

function addAir(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('air')
    .description('say whether a fresh film can blush in the air of the room, and what would help')
    .requiredOption('--temp <temperature>', 'air temperature, such as 18C or 65F; °C without a unit')
    .requiredOption('--rh <percent>', 'relative humidity, such as 70%')
    .option('--altitude <height>', 'height above the sea, such as 300m or 1000ft')
    .option('--speed <speed>', 'air speed over the panel, such as 0.5m/s or 100ft/min')
    .option('--mix <mix>', 'clear dope 1:1 with the general, retarded or fast thinner, or a job file: its first mix, or FILE#id', 'general')
    .addOption(new Option('--faces <count>', 'faces of the film\'s backing open to the air: 2 cloth, 1 backed').choices(['1', '2']).default('2'))
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the report')
    .action(async (options: AirOptions) => finish(await air(io, options)));
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

function strokesOption(): Option {
  return new Option('--strokes <choice>', "speed of the strokes: each set-up's own for the target film, or the plan's for all").choices(['to-target', 'as-stated']).default('to-target');
}

function addCard(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('card')
    .description("fit a gun's fan from a test card: readings across it (CSV) or a photograph (PNG)")
    .argument('<card>', 'CSV with the columns x_mm and film_um (or any measure in proportion), or PNG; - for CSV on standard input')
    .option('--size <size>', 'of a photograph: true width and height of what the corners span, such as 420mmx297mm')
    .option('--corners <places>', 'of a photograph: x,y in pixels of its lower left, lower right, upper right and upper left corner; the whole picture without it')
    .addOption(new Option('--kind <kind>', 'what was sprayed on a photographed card').choices(['burst', 'stroke']).default('burst'))
    .addOption(new Option('--along <side>', 'side of the card that a stroke ran along').choices(['x', 'y']).default('x'))
    .option('--seed <number>', 'fixes the chance in the intervals', '1')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (path: string, options: CardOptions) => finish(await card(io, path, options)));
}

function addCompare(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('compare')
    .description('set gun set-ups side by side on one coat: film, evenness, margins, time, liquid, each with what is not known of the set-up')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--setups <ids>', 'ids of set-ups, with commas between; all of the job without it')
    .option('--coat <id>', 'the coat that they lay; the first of the job without it')
    .addOption(strokesOption())
    .option('--cell <size>', 'side of a grid cell, 1mm to 10mm; 4 mm without it')
    .option('--report <file>', 'write a report with maps and working windows, one HTML file')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the table')
    .action(async (job: string, options: CompareCliOptions) => finish(await compare(io, job, options)));
}

function addWindow(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('window')
    .description('map where a coat has no fault, over two of: distance, speed, overlap, fluid, thinner, temperature, humidity')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--x <axis>', 'setting to the right, with or without its ends: speed, distance:150mm..300mm', 'distance')
    .option('--y <axis>', 'setting upward', 'speed')
    .option('--coat <id>', 'which coat; the first of the job without it')
    .option('--setup <id>', "with this set-up in place of the coat's")
    .option('--points <count>', 'points along each side, 10 to 400', '100')
    .option('--map <file>', 'write the map, PNG')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: WindowOptions) => finish(await window(io, job, options)));
}

function addHands(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('hands')
    .description('spray a coat by many simulated hands and rank the set-ups by what they forgive')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--count <hands>', 'hands to each set-up', '200')
    .option('--seed <number>', "fixes every hand; the job's without it")
    .addOption(new Option('--hand <hand>', "whose hand; without it the coat's, or a practised one where that is steady").choices(['practised', 'beginner']))
    .option('--setups <ids>', 'ids of set-ups, with commas between; all of the job without it')
    .option('--coat <id>', 'the coat that they lay; the first of the job without it')
    .addOption(strokesOption())
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the table')
    .action(async (job: string, options: HandsCliOptions) => finish(await hands(io, job, options)));
}

function addFit(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('fit')
    .description('work out set-up, distance, speed, overlap, fluid and thinner for a wished film: the three best that differ in kind, or what stands in the way')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--dry <film>', 'dry film of all coats together, such as 25um or 1mil')
    .option('--weight <weight>', 'its weight instead, such as 30g/m2; without either, each coat is to have its own target')
    .option('--coats <count>', 'coats, all alike', '1')
    .option('--coat <id>', 'which coat of the job; the first without it')
    .option('--setups <ids>', 'set-ups that may be used, with commas between; all of the job without it')
    .option('--distance <range>', 'gun to panel, such as 150mm..250mm')
    .option('--speed <range>', 'speeds of the hand, such as 0.2m/s..0.5m/s')
    .option('--overlap <range>', 'overlaps, such as 40%..60%')
    .addOption(new Option('--passes <passes>', 'single or cross coats').choices(['either', 'single', 'cross']).default('either'))
    .option('--time <time>', 'longest time for one coat, such as 3min')
    .option('--liquid <volume>', 'most liquid for all coats, such as 500mL')
    .option('--out <file>', 'write the job with the first of them')
    .addOption(unitsOption())
    .option('--strict', 'exit code 1 where nothing meets the wish')
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: FitOptions) => finish(await fit(io, job, options)));
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
