import fc from 'fast-check';
import { csvParseRows } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../sim/job/demo.ts';
import { parseJob } from '../../sim/job/parse.ts';
import type { Job } from '../../sim/job/schema.ts';
import { recordPage } from '../../sim/report/html/recordPage.ts';
import { logCsv } from '../../sim/report/record/logCsv.ts';
import { surveysCsv } from '../../sim/report/record/surveysCsv.ts';
import { reportRecord } from '../../sim/run/record/reportRecord.ts';

const MADE = { at: '2026-05-09T10:00+02:00', version: '0.0.0' };
const DIGEST = 'a'.repeat(64);

/** What somebody may type, with the letters that would end a tag, an attribute or a cell. */
const typed = fc.oneof(
  fc.string({ maxLength: 60 }),
  fc.constantFrom('<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', "' onmouseover='alert(1)", '</style><script>', '&lt;b&gt;', '=1+1', '@SUM(A1)', '-2', '+3', '\t=4', 'a"b,c\r\nd', '<!--', ']]>', '</td></table>'),
);

/** A job in which every field that takes words has them: no coats are laid and no scheme is planned, since films are no words. */
function jobOf(words: readonly string[]): Job {
  let next = 0;
  const word = (longest = 60): string => (words[next++ % words.length] as string).slice(0, longest);
  const signed = () => ({ at: MADE.at, who: word(), certificate: word(), words: word(), sha256: DIGEST });
  const history = () => [{ at: MADE.at, who: word(), what: `/${word()}`, before: JSON.stringify(word()) }, { at: MADE.at, who: word(), what: '/signed', before: JSON.stringify({ signed: { at: MADE.at, who: word(), words: word(), sha256: DIGEST }, why: word() }) }, { at: MADE.at, who: word(), what: '/notes', before: word() }];
  const person = () => ({ who: word(), certificate: word() });
  const demo = demoJob();
  const stated = {
    ...demo, name: word(), note: word(), schemes: [], part: { name: word(), panels: demo.part.panels.map((panel) => ({ ...panel, name: word() })) },
    mixes: demo.mixes.map((mix) => ({ ...mix, name: word() })), setUps: demo.setUps.map((setUp) => ({ ...setUp, name: word() })), coats: demo.coats.map((coat) => ({ ...coat, name: word() })),
    log: [{
      id: 'one', kind: 'coat', name: word(), step: word(), coat: 'gone', panels: ['left-side'], started: MADE.at, ...person(), product: { name: word(), batch: word() }, thinner: { name: word(), batch: word() }, ratio: word(),
      cup: { kind: word(40), seconds: 30, temperature_C: 20 }, setUp: 'gone', gun: word(), recording: 'gone', combs: [{ low_um: 50 }], faults: [{ what: word(), where: word(), done: word() }], notes: word(),
      photos: [{ id: 'p', name: word(), width: 2, height: 2, jpeg: 'AAAA' }], history: history(), signed: signed(),
    }],
    surveys: [{
      id: 's', name: word(), panel: 'left-side', at: MADE.at, ...person(), gauge: word(), rule: { kind: 'shop', name: word(), eachMin_um: 10 }, readings: [{ kind: 'metal', dry_um: 12, area: word(40), spot: word(40), note: word() }],
      notes: word(), history: history(), signed: signed(),
    }],
  };
  return parseJob(stated).job;
}

/** Tags of a page with the names of their attributes, as they follow; a line to write on in place of a blank text counts for nothing. */
function markup(html: string): string {
  const bare = html.replaceAll(/<style>[^<]*<\/style>/g, '').replaceAll(/<span class="blank">_+<\/span>/g, '').replaceAll(/="[^"]*"/g, '');
  return (bare.match(/<[^<>]*>/g) ?? []).join('');
}

describe('the page of a record', () => {
  const pageOf = (words: readonly string[]): string => recordPage(reportRecord(jobOf(words), MADE, 'metric'), 'metric');
  const plain = markup(pageOf(['plain words']));

  it('has the same tags and attributes whatever is typed, and no bracket outside of them', () => {
    expect(plain).toContain('<img src width height alt>');
    expect(plain).not.toContain('<script');
    fc.assert(
      fc.property(fc.array(typed.filter((text) => text !== ''), { minLength: 1, maxLength: 12 }), (words) => {
        const html = pageOf(words);
        expect(markup(html)).toBe(plain);
        expect(html.replaceAll(/<style>[^<]*<\/style>/g, '').replaceAll(/<[^<>]*>/g, '')).not.toMatch(/[<>]/);
      }),
      { numRuns: 40 },
    );
  });

  it('would be told of a text that is not escaped', () => {
    expect(markup(pageOf(['plain']).replace('plain', '<b onclick="x">'))).not.toBe(plain);
  });
});

describe('the tables of a record', () => {
  it('begin no cell as a formula, and keep their columns', () => {
    fc.assert(
      fc.property(fc.array(typed, { minLength: 1, maxLength: 12 }), (words) => {
        const record = reportRecord(jobOf(words), MADE, 'metric');
        for (const csv of [logCsv(record.log), surveysCsv(record.surveys)]) {
          const rows = csvParseRows(csv);
          expect(new Set(rows.map((row) => row.length)).size).toBe(1);
          for (const cell of rows.flat()) if (!/^-?[\d.]+(e-?\d+)?$/.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
        }
      }),
      { numRuns: 40 },
    );
  });
});
