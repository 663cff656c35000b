import { Option, type Command } from 'commander';
import { air, type AirOptions } from './air.ts';
import { amounts, type AmountsCliOptions } from './amounts.ts';
import { days, type DaysOptions } from './days.ts';
import type { Io } from './io.ts';
import { mix } from './mix.ts';
import type { MixOptions } from './mixOptions.ts';
import { scheme, type SchemeOptions } from './scheme.ts';
import { sheet, type SheetOptions } from './sheet.ts';
import { today, type TodayOptions } from './today.ts';
import { vapour, type VapourOptions } from './vapour.ts';
import { unitsOption } from './sharedOptions.ts';

/** The commands that plan a job: today, air, mix, vapour, scheme, amounts, days, sheet. */
export function addPlanning(program: Command, io: Io, finish: (code: number) => void): void {
  addToday(program, io, finish);
  addAir(program, io, finish);
  addMix(program, io, finish);
  addVapour(program, io, finish);
  addScheme(program, io, finish);
  addAmounts(program, io, finish);
  addDays(program, io, finish);
  addSheet(program, io, finish);
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
    .option('--guess', 'print what the textbook rules for blends make of it too')
    .option('--slip <file>', 'write a mixing slip to print, HTML')
    .addOption(unitsOption())
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string | undefined, options: MixOptions) => finish(await mix(io, job, options)));
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
