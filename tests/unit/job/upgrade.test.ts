import { describe, expect, it } from 'vitest';
import type { CrosscoatError } from '../../../sim/base/errors.ts';
import { parseJob } from '../../../sim/job/parse.ts';
import type { Job } from '../../../sim/job/schema.ts';
import { SCHEMA_VERSION } from '../../../sim/job/schemaFacts.ts';
import { runJob } from '../../../sim/run/runJob.ts';
import { jobText, thrownBy } from './fixtures.ts';

/** Every version that was ever written, and what its file says in this build's words. */
const OLDER = [
  { version: 1, same: 'version-6' },
  { version: 2, same: 'version-6' },
  { version: 3, same: 'version-6' },
  { version: 4, same: 'version-6' },
  { version: 5, same: 'version-6' },
] as const;

describe('a job file of an older version', () => {
  it('is kept as a fixture for every version', () => {
    expect(OLDER.map(({ version }) => version)).toEqual(Array.from({ length: SCHEMA_VERSION - 1 }, (_, i) => i + 1));
  });

  it.each(OLDER)('$version is the same job as its copy in the words of today', ({ version, same }) => {
    const old = JSON.parse(jobText(`version-${version}`)) as Job;
    const today = JSON.parse(jobText(same)) as Job;
    expect(old.schemaVersion).toBe(version);
    expect(today.schemaVersion).toBe(SCHEMA_VERSION);
    expect(parseJob(old).job).toEqual(today);
    expect(parseJob(today)).toEqual({ job: today, warnings: [] });
  });

  it('says in one short sentence what it could not state', () => {
    const { warnings } = parseJob(jobText('version-1'));
    expect(warnings).toEqual([
      {
        code: 'defaults-used',
        text: 'This job was written as version 1, which did not ask for the air of the room, what lies under the film, cap pressure and the viscosity behind the drop size; the usual values are taken.',
        place: { pointer: '/schemaVersion' },
      },
    ]);
  });

  it.each([2, 3, 4, 5])('of version %i says nothing, since later ones ask for nothing new', (version) => {
    expect(parseJob(jobText(`version-${version}`)).warnings).toEqual([]);
  });

  it('still names what it could have stated and did not', () => {
    const { cell_mm, ...old } = JSON.parse(jobText('version-1')) as Job;
    const { warnings } = parseJob(old);
    expect(warnings.map(({ place }) => place.pointer)).toEqual(['/schemaVersion', '/cell_mm']);
    expect(warnings[1]?.text).toBe(`Not stated, so the usual value is taken: /cell_mm = ${cell_mm}.`);
  });

  it('may state what only a later version asks for', () => {
    const old = { ...(JSON.parse(jobText('version-1')) as Job), air: { temperature_C: 10, humidity_percent: 80 } };
    const { job, warnings } = parseJob(old);
    expect(job.air).toMatchObject({ temperature_C: 10, humidity_percent: 80, ceiling_C: 32 });
    expect(warnings[1]?.text).toContain('/air/altitude_m = 0');
  });

  it('is refused for its faults as any other', () => {
    const error = thrownBy(() => parseJob({ ...(JSON.parse(jobText('version-1')) as Job), setUps: 'gun' })) as CrosscoatError;
    expect(error.code).toBe('schema');
    expect(error.place.pointer).toBe('/setUps');
  });

  // Figures of the last build that wrote version 1, on the same fixture; single precision moves the seventh digit.
  it('1 gives the film that it gave then', () => {
    const [coat] = runJob(parseJob(jobText('version-1')).job, { cures: false });
    const { film, account } = coat!.laid;
    const mean_um = (of_m: Float32Array): number => (of_m.reduce((sum, value) => sum + value, 0) / of_m.length) * 1e6;
    expect(film.wet_m.length).toBe(60000);
    expect(mean_um(film.wet_m) / 50.3505970).toBeCloseTo(1, 6);
    expect(mean_um(film.dry_m) / 8.12499940).toBeCloseTo(1, 6);
    expect(account.flight_m3 / 1.373783705e-6).toBeCloseTo(1, 6);
  });
});
