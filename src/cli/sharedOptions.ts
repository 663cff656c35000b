import { Option } from 'commander';

/** Units of a report. */
export function unitsOption(): Option {
  return new Option('--units <system>', 'units of the report').choices(['metric', 'us']).default('metric');
}

/** How fast the strokes of a compared set-up are. */
export function strokesOption(): Option {
  return new Option('--strokes <choice>', "speed of the strokes: each set-up's own for the target film, or the plan's for all").choices(['to-target', 'as-stated']).default('to-target');
}
