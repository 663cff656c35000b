import { readFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { CROSSCOAT_VERSION } from '../../../../sim/base/version.ts';
import { demoJob, withDemoRecord } from '../../../../sim/job/demo.ts';
import type { Job } from '../../../../sim/job/schema.ts';
import { canonicalForm } from '../../../../sim/log/digest.ts';
import { recordPage } from '../../../../sim/report/html/recordPage.ts';
import { keepRows } from '../../../../sim/report/record/keepRows.ts';
import { labelRows } from '../../../../sim/report/record/labelRows.ts';
import { readingRows } from '../../../../sim/report/record/readingRows.ts';
import { recordText } from '../../../../sim/report/record/recordText.ts';
import { productDoubts, recordFaults, unsignedNames } from '../../../../sim/report/record/recordWords.ts';
import { surveysCsv } from '../../../../sim/report/record/surveysCsv.ts';
import { reportRecord } from '../../../../sim/run/record/reportRecord.ts';

const MADE = { at: '2026-05-09T10:00+02:00', version: CROSSCOAT_VERSION };
const demo = withDemoRecord(demoJob(), readFileSync(new URL('../../../../sim/job/demo-record.json', import.meta.url), 'utf8'));
/** No scheme to plan, and no coat to lay again: quick. The recorded session is not in it. */
const job: Job = { ...demo, schemes: [], surveys: demo.surveys!.map((survey) => ({ ...survey, coats: [], dryDensity_kg_m3: 1250 })) };
const record = reportRecord(job, MADE, 'metric');
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe('reportRecord', () => {
  it('has the digest of the canonical form, as a general tool gives it', () => {
    expect(record.digest).toBe(createHash('sha256').update(canonicalForm(job)).digest('hex'));
  });

  it('checks every signature: one whose recording is gone, one of a survey that was changed', () => {
    expect(record.log.map(({ signature }) => signature)).toEqual(['matches', 'matches', 'unsigned', 'recording-missing', 'unsigned']);
    expect(record.surveys.map(({ signature }) => signature)).toEqual(['entry-changed', 'unsigned']);
    expect(recordFaults(record)).toHaveLength(3);
    expect(unsignedNames(record)).toEqual(['Tapes, patches, inspection ring, drain grommets', 'Run below the inspection ring levelled', 'Third clear by coupons']);
  });

  it('stands where a survey cannot be judged, and says why', () => {
    const [first] = job.surveys!;
    const { surveys } = reportRecord({ ...job, surveys: [{ ...first!, panel: 'gone' }] }, MADE, 'metric');
    expect(surveys[0]!.reported).toBeNull();
    expect(surveys[0]!.problem).toContain('panel "gone" is not in the job');
    expect(recordPage({ ...record, surveys }, 'metric')).toContain('Could not be judged');
  });

  it('tells a survey that passes on one spot of five as a fault', () => {
    const [first] = job.surveys!;
    const survey = { ...first!, name: 'One spot', coats: [], rule: { kind: 'spots-areas' as const, min_um: 90, max_um: 110, level: 3 }, readings: [98, 100, 102].map((dry_um) => ({ kind: 'metal' as const, dry_um })) };
    const short = reportRecord({ ...job, log: [], surveys: [{ ...survey, signed: undefined }] }, MADE, 'metric');
    expect(recordFaults(short)).toEqual(['survey “One spot”: passes on fewer spots than the rule asks for']);
    expect(recordText(short, 'metric').replaceAll(/\s+/g, ' ')).toContain('Passes: on 1 spot of the five that the rule asks for');
  });

  it('the CSV of the surveys has the signature of each, as the log’s has', () => {
    const [head, ...rows] = surveysCsv(record.surveys).trimEnd().split('\r\n');
    const { signed } = job.surveys![0]!;
    expect(head).toMatch(/,signature,signed_at,signed_by,signed_certificate,signed_words,signed_sha256$/);
    expect(rows[0]).toContain(`entry-changed,${signed!.at},`);
    expect(rows[0]!.endsWith(`,${signed!.sha256}`)).toBe(true);
    expect(rows.at(-1)).toMatch(/,unsigned,,,,,$/);
  });

  it('puts the log in the order of its starts', () => {
    const { log } = reportRecord({ ...job, surveys: [], log: [...job.log!].reverse() }, MADE, 'metric');
    expect(log.map(({ entry }) => entry.id)).toEqual(record.log.map(({ entry }) => entry.id));
  });
});

describe('the record in words', () => {
  it('marks the readings that decide, and tells a comb as two teeth', () => {
    const rows = readingRows(record.surveys[1]!, 'metric');
    // The mean is below 15 µm: the coupons below it decide.
    expect(rows.filter(({ decides }) => decides).length).toBeGreaterThan(0);
    expect(rows[0]!.read).toBe('4.4 g to 5.11 g on 400 cm²');
    expect(recordPage(record, 'metric')).toContain('between 75 and 100 µm wet');
    expect(recordPage(record, 'us')).toContain('between 2.95 and 3.94 mil wet');
  });

  it('names the product of each layer for the label, and what was not logged', () => {
    expect(labelRows(demo)).toEqual([
      { layer: 'clear', products: 'Clear dope, club stock (CD-0412); General thinner, club stock (GT-118)', coats: '3 of 4 coats logged' },
      { layer: 'aluminium', products: '', coats: '0 of 2 coats logged' },
      { layer: 'colour', products: '', coats: '0 of 4 coats logged' },
    ]);
  });

  it('asks about products of different names, and not about one product and its thinner', () => {
    expect(productDoubts(job)).toEqual([]);
    const other = productDoubts({ log: [...job.log!, { ...job.log![0]!, product: { name: 'Another dope' } }] });
    expect(other).toHaveLength(1);
    expect(other[0]).toContain('ask the licensed person');
  });

  it('counts what is kept, and judges nothing', () => {
    const rows = keepRows(record);
    expect(rows.map(({ found }) => found)).toContain('both in 5 of 5 entries');
    expect(rows.find(({ what }) => what.startsWith('Form 337'))!.found).toContain('ask the licensed person');
    for (const { what, found } of rows) expect(`${what} ${found}`).not.toMatch(/airworthy|compliant|certified/i);
  });

  it('says what to look at before all else, and leaves no field for a signature blank', () => {
    expect(flat(recordText(record, 'metric'))).toContain('Look at these first');
    const page = recordPage(record, 'metric');
    expect(page.indexOf('certifies nothing')).toBeLessThan(page.indexOf('<h2>Plan</h2>'));
    for (const field of ['Date of completion', 'Certificate number and kind', 'Signature']) expect(page).toMatch(new RegExp(`${field}</th><td><span class="blank">_+</span>`));
  });

  it('is made by the version that the package states', () => {
    expect(JSON.parse(readFileSync(new URL('../../../../package.json', import.meta.url), 'utf8'))).toMatchObject({ version: CROSSCOAT_VERSION });
  });
});
