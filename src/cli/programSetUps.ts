import { Option, type Command } from 'commander';
import { card, type CardOptions } from './card.ts';
import { compare, type CompareCliOptions } from './compare.ts';
import { fit, type FitOptions } from './fit.ts';
import { hands, type HandsCliOptions } from './hands.ts';
import type { Io } from './io.ts';
import { window, type WindowOptions } from './window.ts';
import { unitsOption, strokesOption } from './sharedOptions.ts';

/** The commands of the gun set-ups: card, compare, window, hands, fit. */
export function addSetUps(program: Command, io: Io, finish: (code: number) => void): void {
  addCard(program, io, finish);
  addCompare(program, io, finish);
  addWindow(program, io, finish);
  addHands(program, io, finish);
  addFit(program, io, finish);
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
