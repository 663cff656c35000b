import type { Warning } from '../base/errors.ts';
import { groupFaults } from '../verdict/faults.ts';
import { filmFigures, inTargetFraction } from '../verdict/figures.ts';
import type { Fault, Zone } from '../verdict/verdict.ts';
import { findZones } from '../verdict/zones.ts';
import { type Cured, tryCures } from './cures.ts';
import { explainZones, MOST_EXPLAINED } from './explain.ts';
import type { LayOptions } from './lay.ts';
import type { CoatResult, CoatSetting, CoatStrokes, LaidCoat } from './result.ts';
import { stopIfAsked } from './stop.ts';

/** How a coat is judged: with or without cures, stopped or watched from outside. */
export interface JudgeOptions extends Pick<LayOptions, 'shouldStop'> {
  /** Whether cures are tried by laying the coat again; true where not given. */
  readonly cures?: boolean;
  /** Share of the work done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/**
 * Judges a coat: figures, fault zones, the cause of each, and cures tried by laying the coat again.
 * @throws CrosscoatError `cancelled` when `shouldStop` says so.
 */
export function judgeCoat(
  setting: CoatSetting,
  strokes: CoatStrokes,
  laid: LaidCoat,
  options: JudgeOptions = {},
): CoatResult {
  stopIfAsked(options.shouldStop);
  const { film } = laid;
  const { panelGrid, target } = setting;
  const found = findZones(film, panelGrid, target);
  const faults = groupFaults(explainZones(setting, strokes, found.zones), target);
  const cured = options.cures === false ? untouched(faults) : tryCures(setting, strokes, film, found.zones, faults, options);
  const verdict = {
    wet: filmFigures(film.wet_m, panelGrid),
    dry: filmFigures(film.dry_m, panelGrid),
    inTargetFraction: inTargetFraction(film, panelGrid, target),
    faults: cured.faults,
    warnings: [...found.warnings, ...manyZonesWarnings(found.zones), ...untriedWarnings(cured)],
  };
  return { setting, strokes, laid, verdict };
}

function untouched(faults: readonly Fault[]): Cured {
  return { faults, reruns: 0, untried: 0 };
}

function manyZonesWarnings(zones: readonly Zone[]): Warning[] {
  if (zones.length <= MOST_EXPLAINED) return [];
  return [
    {
      code: 'model-limit',
      text: `${zones.length} fault zones; causes were sought for the ${MOST_EXPLAINED} worst only`,
      place: {},
    },
  ];
}

function untriedWarnings({ reruns, untried }: Cured): Warning[] {
  if (untried === 0) return [];
  return [
    {
      code: 'model-limit',
      text: `The coat was laid ${reruns} times to try cures; ${untried} further ${untried === 1 ? 'fault was' : 'faults were'} left without a tried cure. Mend the worst first and judge again`,
      place: {},
    },
  ];
}
