import { counted } from '../../base/counted.ts';
import type { LogEntrySpec } from '../../job/schema.ts';
import type { ReportedRecord } from './reportedRecord.ts';

/** One thing that people are expected to keep, whose rule it is, and what of it this record holds. */
export interface KeepRow {
  readonly what: string;
  readonly source: string;
  readonly found: string;
}

const FAR_43_9 = '14 CFR 43.9, from memory';
const PRACTICE = 'common practice';

/** Said over the list. */
export const KEEP_NOTE =
  'What people are expected to keep, as far as this program knows; rules of other countries differ. Whether a re-cover is a log entry or a form, and what else is wanted, ask the licensed person. What is found here is counted, not judged.';

/** The list of what to keep, with what this record holds of each. */
export function keepRows({ job, log, surveys }: ReportedRecord): KeepRow[] {
  const entries = log.map(({ entry }) => entry);
  const coats = entries.filter(({ kind }) => kind === 'coat');
  const inEntries = entryShare(entries);
  const inCoats = entryShare(coats, 'coat', 'coats');
  const readings = surveys.reduce((sum, { survey }) => sum + survey.readings.length, 0);
  const isMoving = job.part.panels.some(({ hinge_mm }) => hinge_mm !== undefined);
  return [
    { what: 'Description of the work, and the date it was completed', source: FAR_43_9, found: `both in ${inEntries(({ name, ended }) => !isBlank(name) && ended !== undefined)}` },
    { what: 'Name of the person who did the work, where it is another than who approves it', source: FAR_43_9, found: `a name in ${inEntries(({ who }) => !isBlank(who))}` },
    { what: 'Signature, certificate number and kind of certificate of the person who approves it for return to service', source: FAR_43_9, found: `signed off: ${inEntries(({ signed }) => signed !== undefined)}; with a certificate number: ${inEntries(({ signed }) => !isBlank(signed?.certificate))}. Signing off here is no approval` },
    { what: 'Form 337 in duplicate, where it is a major repair or alteration', source: '14 CFR 43, appendix B, from memory', found: 'not kept here: ask the licensed person whether it is one' },
    { what: 'The approved data that were followed: process manual, its revision, approval of the fabric', source: '14 CFR 43.13, from memory', found: 'write it into a remark; not looked for here' },
    { what: 'Which cloth and which product lies in each layer, with batch and shelf life', source: PRACTICE, found: `batch and shelf life in ${inCoats(({ product }) => !isBlank(product?.batch) && product?.shelfLife !== undefined)}` },
    { what: 'Ratio, cup seconds, and air at the start and at the end', source: PRACTICE, found: `all of it in ${inCoats(({ ratio, cup, airStart, airEnd }) => !isBlank(ratio) && cup !== undefined && airStart !== undefined && airEnd !== undefined)}` },
    { what: 'Film read, by a stated rule', source: PRACTICE, found: surveys.length === 0 ? 'no survey yet' : `${counted(surveys.length, 'survey')}, ${counted(readings, 'reading')}` },
    { what: 'Faults and what was done about them; photographs before the covering and of each fault', source: PRACTICE, found: `${counted(sum(entries, ({ faults }) => faults.length), 'fault')}, ${counted(sum(entries, ({ photos }) => photos.length), 'photograph')}` },
    { what: 'Weight and balance of the aircraft, and balance of each moving surface after refinishing', source: 'AC 43.13-1B and the maker’s manual, from memory', found: isMoving ? 'a moving surface: its balance check is not kept here' : 'not kept here' },
  ];
}

/** In how many of some entries something is so. */
function entryShare(entries: readonly LogEntrySpec[], one = 'entry', many = 'entries'): (is: (entry: LogEntrySpec) => boolean) => string {
  return (is) => (entries.length === 0 ? `no ${one} yet` : `${entries.filter(is).length} of ${counted(entries.length, one, many)}`);
}

function sum(entries: readonly LogEntrySpec[], count: (entry: LogEntrySpec) => number): number {
  return entries.reduce((total, entry) => total + count(entry), 0);
}

function isBlank(text: string | undefined): boolean {
  return text === undefined || text.trim() === '';
}
