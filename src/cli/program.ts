import { Argument, Command, Option } from 'commander';
import { jobJsonSchema, rubricJsonSchema, sessionJsonSchema } from '../../sim/index.ts';
import { air, type AirOptions } from './air.ts';
import { amounts, type AmountsCliOptions } from './amounts.ts';
import { card, type CardOptions } from './card.ts';
import { compare, type CompareCliOptions } from './compare.ts';
import { days, type DaysOptions } from './days.ts';
import { debrief, type DebriefOptions } from './debrief.ts';
import { demo } from './demo.ts';
import { demonstrate, type DemonstrateOptions } from './demonstrate.ts';
import { drill, type DrillOptions } from './drill.ts';
import { EXIT } from './exitCodes.ts';
import { FIELD_NAMES } from './filmFiles.ts';
import { fit, type FitOptions } from './fit.ts';
import { hands, type HandsCliOptions } from './hands.ts';
import type { Io } from './io.ts';
import { mix } from './mix.ts';
import type { MixOptions } from './mixOptions.ts';
import { plan, type PlanOptions } from './plan.ts';
import { scheme, type SchemeOptions } from './scheme.ts';
import { sheet, type SheetOptions } from './sheet.ts';
import { spray, type SprayOptions } from './spray.ts';
import { today, type TodayOptions } from './today.ts';
import { vapour, type VapourOptions } from './vapour.ts';
import { window, type WindowOptions } from './window.ts';

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
  crosscoat amounts demo.json
  crosscoat days demo.json --late clear-3=2h --ics days.ics

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
  addToday(program, io, finish);
  addAir(program, io, finish);
  addMix(program, io, finish);
  addVapour(program, io, finish);
  addDemonstrate(program, io, finish);
  addCard(program, io, finish);
  addCompare(program, io, finish);
  addWindow(program, io, finish);
  addHands(program, io, finish);
  addFit(program, io, finish);
  addScheme(program, io, finish);
  addSheet(program, io, finish);
  addDays(program, io, finish);
  addDrill(program, io, finish);
  addDebrief(program, io, finish);
  addAmounts(program, io, finish);
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

function addToday(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('today')
    .description('the front sheet: can I spray now, how far to thin, film wet and dry, will it hold, when the next step, how much and how heavy')
    .requiredOption('--temp <temperature>', 'air temperature, such as 21C or 70F; °C without a unit')
    .requiredOption('--rh <percent>', 'relative humidity, such as 60%')
    .option('--finish <finish>', 'clear-dope, aluminium-dope, colour-dope, lacquer, primer or enamel')
    .option('--thinner <thinner>', 'general, retarded or fast')
    .option('--ratio <ratio>', 'finish to thinner by volume, such as 3:1, or finish, thinner and retarder, such as 8:1:1')
    .option('--cup <cup>', 'the cup of the reading, such as ford4, zahn2, iso4 or din4')
    .option('--seconds <seconds>', 'drain time of the mix in that cup')
    .option('--area <area>', 'to be covered, such as 4m2 or 40ft2')
    .option('--dry <film>', 'dry film wanted in all coats of this finish, such as 25um or 1mil')
    .option('--coats <count>', 'coats that it is laid in; without it the fewest that hold')
    .option('--slope <angle>', 'side from level: 90deg upright, 0deg level')
    .addOption(new Option('--backing <backing>', 'what lies under the film').choices(['open-cloth', 'thin-sheet', 'thick-board']))
    .option('--surface <temperature>', 'of the part; as warm as the air without it')
    .option('--liquid <temperature>', 'of the liquid in the cup; as warm as the air without it')
    .option('--afternoon <temperature>', 'of the room later, for the same mix')
    .option('--sanded <film>', 'dry film that sanding takes off, such as 3um')
    .option('--lands <percent>', 'share of the solids leaving the gun that lands, such as 65%')
    .option('--altitude <height>', 'height above the sea, such as 300m or 1000ft')
    .option('--speed <speed>', 'air speed over the panel, such as 0.5m/s or 100ft/min')
    .option('--working', 'print how each answer comes about: formula, inputs, sources, limits')
    .option('--job', 'print the answer as a job file instead')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (options: TodayOptions) => finish(await today(io, options)));
}

function addAir(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('air')
    .description('say whether the air of the room goes for spraying and by whose rule, whether a film can blush, and what would help')
    .option('--temp <temperature>', 'air temperature, such as 18C or 65F; °C without a unit')
    .option('--rh <percent>', 'relative humidity, such as 70%')
    .option('--surface <temperature>', 'temperature of the part\'s surface, such as 18C')
    .option('--hours <file>', 'the day, CSV with a header such as time,temperature_C,humidity_percent')
    .option('--at <time>', 'the air of this time of --hours, such as 14:00, in place of --temp and --rh')
    .option('--retarder <percent>', 'share of the thinner that is retarder, such as 10%')
    .option('--altitude <height>', 'height above the sea, such as 300m or 1000ft')
    .option('--speed <speed>', 'air speed over the panel, such as 0.5m/s or 100ft/min')
    .option('--mix <mix>', 'clear dope 1:1 with the general, retarded or fast thinner, or a job file: its first mix, or FILE#id', 'general')
    .addOption(new Option('--faces <count>', 'faces of the film\'s backing open to the air: 2 cloth, 1 backed').choices(['1', '2']).default('2'))
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the report')
    .action(async (options: AirOptions) => finish(await air(io, options)));
}

function addVapour(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('vapour')
    .description("estimate what solvent does to the air of a room: some liquid, or a job's coats minute by minute; never a clearance")
    .argument('[job]', 'job file (JSON), or - for standard input; without it a liquid by --solvent or --blend')
    .option('--solvent <id>', 'a solvent, such as toluene')
    .option('--blend <shares>', 'solvents with their share of the liquid, such as mek:40,toluene:30,n-butyl-acetate:30')
    .option('--litres <volume>', 'how much evaporates, such as 1L or 1 US gal; litres without a unit')
    .option('--over <time>', 'time in which it evaporates, such as 15min; all at once without it')
    .option('--room <size>', "the room, such as 120m3, 4200ft3 or 20x15x10ft; the job's without it")
    .option('--fresh <flow>', 'outside air that the fan brings, such as 3000m3/h or 5600cfm')
    .option('--face <area>', 'open face of the booth, such as 5.2m2 or 8x7ft')
    .option('--mixing <factor>', 'for uneven mixing of the air, 1 to 10; 4 without it')
    .option('--temp <temperature>', 'of the air around a liquid, such as 20C or 68F; 20C without it')
    .option('--scheme <id>', 'scheme of the job; the first without it')
    .option('--coat <id>', 'one step of the scheme, or one coat of the job, minute by minute')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the report')
    .action(async (job: string | undefined, options: VapourOptions) => finish(await vapour(io, job, options)));
}

function addMix(program: Command, io: Io, finish: (code: number) => void): void {
  const collect = (text: string, before: readonly string[]): readonly string[] => [...before, text];
  program
    .command('mix')
    .description('turn cup seconds into viscosity and back, or work a mix out for pouring: ratio, batch, cup marks, seconds')
    .argument('[job]', 'job file (JSON) whose mix it is, or - for standard input; a generic mix without it')
    .option('--mix <mix>', "id of the job's mix, its first without it; without a job general, retarded or fast")
    .option('--cup <cup>', 'which cup: ford4, zahn2, iso4, din4 and so on')
    .option('--seconds <time>', 'drain time that was read, such as 36s')
    .option('--viscosity <value>', 'kinematic viscosity in mm²/s, to be turned into seconds')
    .option('--from <cup>', 'the cup in which --seconds were read, for --to')
    .option('--to <cup>', 'say the seconds of this cup too')
    .option('--temp <temperature>', 'of the liquid, such as 21C or 70F')
    .option('--at <temperature>', 'the same mix at this temperature too')
    .option('--ratio <ratio>', 'how far to thin: 4:1, 8:1:1 with retarder, "1 part in 4", "150 %", "10 % of the total"')
    .addOption(new Option('--by <measure>', 'what the parts of --ratio are').choices(['volume', 'weight']).default('volume'))
    .option('--pot <volume>', 'what may be filled into the pot, such as 2L')
    .option('--area <area>', 'area to be coated, such as 6m2')
    .option('--dry <film>', 'dry film of one coat, such as 25um')
    .option('--wet <film>', 'wet film of one coat instead')
    .option('--coats <count>', 'coats that are mixed for; 1 without it')
    .option('--transfer <share>', 'share that lands on the part; 65% without it, 50% to 80%')
    .option('--left <volume>', 'what stays in pot and hose; 100mL without it')
    .option('--reading <reading>', 'your own cup reading, "2:1 ford4 30s 20C"; give it twice, at two ratios', collect, [])
    .option('--want <time>', 'seconds wanted for the gun: says the ratio')
    .option('--slip <file>', 'write a mixing slip to print, HTML')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string | undefined, options: MixOptions) => finish(await mix(io, job, options)));
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

function addSheet(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('sheet')
    .description('print the job card: every step with its mix, gun, film, wait and cautions, a page a day')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--scheme <id>', 'only this scheme')
    .option('--html <file>', 'write it as one HTML file that prints on A4 and Letter')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: SheetOptions) => finish(await sheet(io, job, options)));
}

function addDays(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('days')
    .description('lay all schemes through the days: when each step begins, what is waited for and why, and when all is ready')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--start <time>', "local time of the first step, such as 2026-05-04T08:00; the job's without it")
    .option('--late <step=time>', 'begin a step so much later than planned, such as clear-3=2h; may be given again', (text: string, before: readonly string[]) => [...before, text], [] as readonly string[])
    .option('--ics <file>', 'write the days as a calendar, iCalendar')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: DaysOptions) => finish(await days(io, job, options)));
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

function addScheme(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('scheme')
    .description("work out a job's scheme of coats: film and weight after each step, what the trade's rules say against it; or print a preset")
    .argument('[job]', 'job file (JSON), or - for standard input')
    .option('--scheme <id>', 'which scheme; the first of the job without it')
    .addOption(new Option('--preset <id>', 'print the steps and sources of a preset in place of a job').choices(['ac-43-13', 'lacquer']))
    .addOption(unitsOption())
    .option('--strict', 'exit code 1 where a rule says stop')
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string | undefined, options: SchemeOptions) => finish(await scheme(io, job, options)));
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

function addAmounts(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('amounts')
    .description("what a job's scheme of coats takes to buy and in which tins, what it weighs and where that acts, and what it costs in time and money")
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--scheme <id>', 'which scheme; the first of the job without it')
    .option('--left <volume>', 'mixed liquid that stays in cup and hose for each sprayed coat, such as 100mL')
    .option('--cloth', 'count the weight of the cloth too, as that of Grade A cotton')
    .option('--csv <file>', 'write the tables, CSV')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: AmountsCliOptions) => finish(await amounts(io, job, options)));
}
