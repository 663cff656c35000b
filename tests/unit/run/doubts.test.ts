import { describe, expect, it } from 'vitest';
import { strokesOf } from '../../../sim/run/strokes.ts';
import { session } from './session.ts';
import { testSetting } from './testJob.ts';

describe('doubts about recorded strokes', () => {
  const setting = testSetting();
  const warningsOf = (path: ReturnType<typeof session>) => strokesOf(setting, { path, warnings: [] }).warnings;

  it('has none for strokes over the panel at a believed distance', () => {
    expect(warningsOf(session(setting, {}))).toEqual([]);
  });

  it('names strokes outside the distances at which the fan may be believed', () => {
    const [warning] = warningsOf(session(setting, { 3: { distance_m: () => 0.45 } }));
    expect(warning?.code).toBe('distance-range');
    expect(warning?.place.stroke).toBe(3);
    expect(warning?.text).toContain('Stroke 4 went to 450 to 450 mm');
  });

  it('doubts a planned distance once, in the plan', () => {
    const far = testSetting({ plan: { distance_mm: 450 }, size_mm: [700, 900] });
    expect(far.warnings.map(({ code }) => code)).toEqual(['distance-range']);
    expect(strokesOf(far).warnings).toEqual([]);
    // A recording that went there too is a matter of its own.
    expect(strokesOf(far, { path: session(far, {}), warnings: [] }).warnings.map(({ code }) => code)).toContain('distance-range');
  });

  it('says that strokes ran beside the panel, as a file in the wrong unit would', () => {
    const path = session(setting, {});
    const far = { ...path, x_m: path.x_m.map((x) => x + 5) };
    const beside = warningsOf(far).find((warning) => warning.code === 'off-panel');
    expect(beside?.text).toContain('5 strokes (the first is stroke 1) ran wholly beside the panel');
  });
});
