import type { Job } from '../../job/schema.ts';
import { SIGNATURE_STATE_WORDS } from '../changeWords.ts';
import { fewSpotsWords, SURVEY_ANSWER_WORDS } from '../survey/surveyReason.ts';
import type { RecordedSurvey, ReportedRecord } from './reportedRecord.ts';

/** What every record says of itself, first of all. */
export const RECORD_STATEMENT =
  'This sheet records what people wrote down and what gauges read, and works figures out from it. It certifies nothing: it does not say that a repair is airworthy, that a film is acceptable to an authority, or that a procedure was followed. ' +
  'Whether the work is acceptable is for the licensed person, by the approved data, the product data sheet and the rules of the place.';

/** What is taken for granted in a record, beside the models' own assumptions. */
export const RECORD_ASSUMPTIONS: readonly string[] = [
  'Entries and readings are as typed; nobody checked them but the people who signed.',
  'Films, weights and drying times of the plan, and the film on the maps, are the model’s; only what is called a reading was read.',
  'Dew points are worked out from temperature and humidity as noted (formulas of ASHRAE).',
  'Rules that judge surveys are borrowed from standards written for other work; nothing here conforms to a standard by them.',
];

/** How a digest is checked without this program. */
export const DIGEST_CHECK: readonly string[] = [
  'The digest is SHA-256 (FIPS 180-4) of the job file in its canonical form: JSON without white space, keys in order, numbers in their shortest form (RFC 8785, JSON Canonicalization Scheme), as UTF-8 without a line break at its end.',
  'Keep the canonical file beside this sheet. With any general tool: sha256sum FILE (Linux), shasum -a 256 FILE (macOS), certutil -hashfile FILE SHA256 (Windows). The same 64 digits: the file is what this sheet was made from.',
  'A digest shows that something changed. It does not show who changed it, and whoever changes the file can print a new sheet: keep a signed sheet on paper.',
];

/** A person with the certificate's number, or that none was stated. */
export function personWords({ who, certificate }: { readonly who: string; readonly certificate?: string | undefined }): string {
  return `${who.trim() === '' ? 'nobody is named' : who}; ${certificate === undefined || certificate.trim() === '' ? 'no certificate number stated' : `certificate ${certificate}`}`;
}

/** Different names of tins are no fault by themselves; whether they are one system is not for a program to say. */
export function productDoubts({ log = [] }: Pick<Job, 'log'>): string[] {
  const doubt = (what: string, given: readonly (string | undefined)[]): string[] => {
    const names = [...new Set(given.flatMap((name) => (name === undefined || name.trim() === '' ? [] : [name.trim()])))];
    return names.length < 2 ? [] : [`${names.length} ${what} are named: ${names.join('; ')}. The approval of a fabric process is for one maker’s system: where these are not of one, ask the licensed person before anything else goes on.`];
  };
  return [...doubt('products', log.map(({ product }) => product?.name)), ...doubt('thinners', log.map(({ thinner }) => thinner?.name))];
}

/** The verdict of a survey in a word or two; where it could not be judged, that. */
export function surveyAnswerWords({ reported }: Pick<RecordedSurvey, 'reported'>): string {
  if (reported === null) return 'Could not be judged';
  return `${SURVEY_ANSWER_WORDS[reported.judged.answer]}${isOnFewSpots(reported) ? ' on fewer spots than the rule asks for' : ''}`;
}

/** It passes, but some area has fewer than five spots. */
function isOnFewSpots(reported: RecordedSurvey['reported']): boolean {
  return reported !== null && fewSpotsWords(reported.judged) !== '';
}

/** What `--strict` and a reader look for first: rules that fail, stay open or are met on too few spots, signatures that do not match. Empty where there is nothing. */
export function recordFaults({ log, surveys }: ReportedRecord): string[] {
  const signed = [...log.map(({ entry, signature }) => ({ name: entry.name, signature })), ...surveys.map(({ survey, signature }) => ({ name: survey.name, signature }))];
  return [
    ...surveys.flatMap((each) => (each.reported?.judged.answer === 'pass' && !isOnFewSpots(each.reported) ? [] : [`survey “${each.survey.name}”: ${surveyAnswerWords(each).toLowerCase()}`])),
    ...signed.flatMap(({ name, signature }) => (signature === 'unsigned' || signature === 'matches' ? [] : [`“${name}”: ${SIGNATURE_STATE_WORDS[signature]}`])),
  ];
}

/** Things to sign that nobody has signed yet, by name. */
export function unsignedNames({ log, surveys }: ReportedRecord): string[] {
  return [...log.flatMap(({ entry, signature }) => (signature === 'unsigned' ? [entry.name] : [])), ...surveys.flatMap(({ survey, signature }) => (signature === 'unsigned' ? [survey.name] : []))];
}
