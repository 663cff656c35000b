import type { UnitSystem } from '../../sim/index.ts';

/** Options of `crosscoat mix` as commander gives them. */
export interface MixOptions {
  readonly mix?: string;
  readonly cup?: string;
  readonly seconds?: string;
  readonly viscosity?: string;
  readonly from?: string;
  readonly to?: string;
  readonly temp?: string;
  readonly at?: string;
  readonly ratio?: string;
  readonly by: 'volume' | 'weight';
  readonly pot?: string;
  readonly area?: string;
  readonly dry?: string;
  readonly wet?: string;
  readonly coats?: string;
  readonly transfer?: string;
  readonly left?: string;
  readonly reading: readonly string[];
  readonly want?: string;
  readonly guess?: true;
  readonly slip?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}
