import { makeFootprint } from './footprint.ts';
import type { SetUp } from './setUp.ts';
import type { Spray } from './spray.ts';
import { arrivalTable } from './transfer.ts';

/** What a set-up throws: its fan sampled, its flow, and what arrives against distance. */
export function makeSpray(setUp: SetUp): Spray {
  return {
    setUpId: setUp.id,
    footprint: makeFootprint(setUp.fan),
    fluidRate_m3_s: setUp.fluidRate_m3_s,
    volumeSolidsFraction: setUp.volumeSolidsFraction,
    meanDrop_m: setUp.drops.meanDiameter_m,
    triggerLag_s: setUp.triggerLag_s,
    arrival: arrivalTable(setUp),
  };
}
