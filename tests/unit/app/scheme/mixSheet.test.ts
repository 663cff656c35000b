import { beforeEach, describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/index.ts';
import { undo } from '../../../../src/app/document.ts';
import { mixFrom, USUAL_MIX } from '../../../../src/app/scheme/mixPrefs.ts';
import { askMix, sheetMix, sheetMixing, sheetReadings, sheetRetarders, slipHtml, takenSpec, takeThinning, useRatio, useRetarder } from '../../../../src/app/scheme/mixSheet.ts';
import { schemeFrom, USUAL_SCHEME } from '../../../../src/app/scheme/schemePrefs.ts';
import { state } from '../../../../src/app/state.ts';

beforeEach(() => {
  state.job.value = demoJob();
  state.past.value = [];
  state.future.value = [];
  state.scheme.value = USUAL_SCHEME;
});

function mixing() {
  const read = sheetMixing.value;
  if (read === null || 'problem' in read) throw new Error(read?.problem ?? 'no mix');
  return read.value;
}

describe('the sheet of the mix', () => {
  it('works the job’s first mix out, at its own ratio', () => {
    expect(mixing().ratio.thinnerPerFinish).toBe(state.job.value.mixes[0]?.thinnerPerFinish);
    expect(mixing().thinning?.origin).toBe('finish');
    expect(takenSpec.value).toBeNull();
  });

  it('says what is wrong with a ratio, and takes none', () => {
    askMix({ ratio: '10 %' });
    expect(sheetMixing.value).toMatchObject({ problem: expect.stringContaining('of the finish or of the total') as unknown });
    expect([takenSpec.value, slipHtml(), sheetRetarders.value]).toEqual([null, null, []]);
  });

  it('writes ratio, retarder and cup reading by one step', () => {
    const before = state.job.value;
    askMix({ ratio: '8:1.8:0.2', read_s: 30, liquid_C: 19 });
    takeThinning();
    expect(sheetMix.value).toMatchObject({ thinnerPerFinish: 0.25, retarder: { solvent: 'n-butanol', percent: 10 }, cup: { kind: 'zahn-2', seconds: 30, temperature_C: 19 } });
    expect(state.past.value.map(({ label }) => label)).toEqual(['Take this thinning']);
    expect([state.scheme.value.mix.ratio, state.scheme.value.mix.read_s]).toEqual(['', null]);
    expect(mixing().thinning).toMatchObject({ origin: 'cup' });
    undo();
    expect(state.job.value).toBe(before);
  });

  it('takes no reading outside the cup’s range', () => {
    askMix({ ratio: '4:1', read_s: 90 });
    expect(takenSpec.value).toMatchObject({ problem: expect.stringContaining('outside the range') as unknown });
    takeThinning();
    expect(state.past.value).toEqual([]);
  });

  it('goes by two readings once both are read', () => {
    askMix({ first: { ratio: '4:1', seconds: 40, temperature_C: 21 } });
    expect(mixing().thinning?.origin).toBe('finish');
    askMix({ second: { ratio: '1:1', seconds: 20, temperature_C: 21 }, wanted_s: 30 });
    expect(mixing().thinning?.origin).toBe('readings');
    expect(mixing().thinning?.wanted?.ratio?.thinnerPerFinish).toBeCloseTo(0.4272, 3);
    useRatio(mixing().thinning!.wanted!.ratio!);
    expect(mixing().thinning?.time.seconds).toBeCloseTo(30, 1);
    askMix({ second: { ratio: '1/1', seconds: 20, temperature_C: 21 } });
    expect(sheetReadings.value[1]).toMatchObject({ problem: expect.stringContaining('may be a share') as unknown });
  });

  it('tries retarder: more keeps the film warmer and takes longer', () => {
    const steps = sheetRetarders.value;
    expect(steps.map(({ fraction }) => Number(fraction.toFixed(9)))).toEqual([0, 0.05, 0.1, 0.15, 0.2, 0.25]);
    for (const [i, step] of steps.entries()) {
      if (i === 0) continue;
      expect(step.blushMargin_K).toBeGreaterThan(steps[i - 1]!.blushMargin_K);
      expect(step.timeRatio).toBeGreaterThan(steps[i - 1]!.timeRatio);
    }
    useRetarder(0.15);
    expect(mixing().ratio.retarderFraction).toBeCloseTo(0.15, 12);
    expect(mixing().retarder?.judgement).toBe('usual');
  });

  it('is kept only where it still is a value', () => {
    expect(schemeFrom({ mix: { cup: 'nope', wanted_s: -1, by: 'x', first: { seconds: 1e9 }, pot_mL: 500 } }).mix).toEqual({ ...USUAL_MIX, pot_mL: 500 });
    expect(mixFrom({ ...USUAL_MIX, wanted_s: NaN }).wanted_s).toBe(USUAL_MIX.wanted_s);
    expect(schemeFrom({}).mix).toEqual(USUAL_MIX);
    // What an older build kept for not read.
    expect(schemeFrom({ mix: { read_s: 0, first: { seconds: 0 } } }).mix).toEqual(USUAL_MIX);
    expect(schemeFrom({ mix: { read_s: 30, first: { seconds: 'x' } } }).mix).toEqual({ ...USUAL_MIX, read_s: 30 });
  });
});
