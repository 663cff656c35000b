import { Option, type Command } from 'commander';
import type { Io } from './io.ts';
import { report, type ReportOptions } from './report.ts';
import { unitsOption } from './sharedOptions.ts';
import { survey, type SurveyOptions } from './survey.ts';
import { RULE_CHOICES } from './surveyRule.ts';

/** The commands of the record: survey, report. */
export function addRecord(program: Command, io: Io, finish: (code: number) => void): void {
  addSurvey(program, io, finish);
  addReport(program, io, finish);
}

function addSurvey(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('survey')
    .description('judge film readings by a stated rule, or say how many readings a rule asks for')
    .argument('[readings]', 'CSV with the unit in its header, such as dft_um, or a job file with surveys; - for standard input')
    .addOption(new Option('--rule <rule>', "what judges them; a job's surveys have their own").choices(Object.keys(RULE_CHOICES)))
    .option('--nominal <film>', 'nominal film, such as 100um or 4mil; with pa2 a single value, 20 % to each side of it')
    .option('--min <film>', 'pa2: least specified film; shop: least of any reading')
    .option('--max <film>', 'most: pa2 specified film, iso19840 and shop of any reading; iso19840 has three times the nominal film without it')
    .option('--level <level>', 'pa2: restriction level, 1 to 5; 3 without it')
    .option('--low <share>', 'no reading below this share of the nominal film; iso19840 80 %, 90-10 90 % without it')
    .option('--share <share>', 'share of the readings that may be low; iso19840 20 %, 90-10 10 % without it')
    .option('--correction <film>', 'iso19840: taken off each gauge reading for a rough surface beneath')
    .option('--mean-min <film>', 'shop: least mean')
    .option('--mean-max <film>', 'shop: most mean')
    .option('--spread <share>', 'shop: most standard deviation, as a share of the mean')
    .addOption(new Option('--unit <unit>', 'unit of films whose column names none').choices(['um', 'mil', 'mm']))
    .option('--spot-means', 'pa2: each row is the mean of a spot')
    .option('--density <density>', 'of the dry film, for coupons, such as 1300kg/m3')
    .option('--solids <share>', 'of the mix as sprayed, by volume, for the comb, such as 20%')
    .option('--survey <id>', 'of a job file: which survey; all of them without it')
    .option('--plan', "print how many readings the rule's own table asks for on --area")
    .option('--area <area>', 'with --plan: area to be surveyed, such as 30m2 or 2800ft2')
    .addOption(unitsOption())
    .option('--strict', 'exit code 1 where the rule fails, cannot be decided, or is met on fewer spots than it asks for')
    .option('--json', 'print one JSON object in place of the text')
    .action(async (readings: string | undefined, options: SurveyOptions) => finish(await survey(io, readings, options)));
}

function addReport(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('report')
    .description('the record of a job: plan, log with its signatures checked, surveys judged by their rules, digest; it records and certifies nothing')
    .argument('<job>', 'job file (JSON), or - for standard input')
    .option('--html <file>', 'write it as one HTML file that prints on A4 and Letter and needs nothing else')
    .option('--csv-readings <file>', 'write the readings of all surveys, CSV')
    .option('--csv-log <file>', 'write the log, CSV')
    .option('--canonical <file>', 'write the job in canonical form (RFC 8785): sha256sum of that file is the digest of the record')
    .addOption(unitsOption())
    .option('--strict', "exit code 1 where a survey's rule fails, cannot be decided or is met on too few spots, or a signature does not match")
    .option('--json', 'print one JSON object in place of the text')
    .action(async (job: string, options: ReportOptions) => finish(await report(io, job, options)));
}
