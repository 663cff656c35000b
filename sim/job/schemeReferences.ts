import { problem, repeatedIds, unknownId } from './idProblems.ts';
import type { Problem } from './problems.ts';
import type { ColourSpec, HourSpec, Job, SchemeSpec, StepSpec, WorkingSpec } from './schema.ts';

/** What the schema cannot say of schemes, hours and working times. */
export function schemeProblems(job: Job): Problem[] {
  const { schemes = [], colours = [], hours = [], working } = job;
  return [
    ...repeatedIds('/schemes', schemes),
    ...repeatedIds('/colours', colours),
    ...schemes.flatMap((scheme, i) => [
      ...repeatedIds(`/schemes/${i}/steps`, scheme.steps),
      ...scheme.panels.flatMap((panel, k) => unknownId(`/schemes/${i}/panels/${k}`, panel, job.part.panels, 'panel')),
      ...scheme.steps.flatMap((step, k) => stepProblems(`/schemes/${i}/steps/${k}`, step, scheme, job, colours)),
    ]),
    ...panelProblems(schemes),
    ...hourProblems(hours),
    ...(working === undefined ? [] : workingProblems(working)),
    ...job.part.panels.flatMap(({ hinge_mm }, i) =>
      hinge_mm !== undefined && hinge_mm[0][0] === hinge_mm[1][0] && hinge_mm[0][1] === hinge_mm[1][1]
        ? [problem(`/part/panels/${i}/hinge_mm`, 'gives one point twice; give two different points on the hinge line')]
        : []),
  ];
}

function stepProblems(pointer: string, step: StepSpec, scheme: SchemeSpec, job: Job, colours: readonly ColourSpec[]): Problem[] {
  const waits = step.latest_h !== undefined && !(step.latest_h > step.wait_h)
    ? [problem(`${pointer}/latest_h`, `= ${step.latest_h} is not after wait_h = ${step.wait_h}; the next step could never begin`)]
    : [];
  if (step.kind !== 'brush' && step.kind !== 'spray') return waits;
  return [
    ...waits,
    ...(step.mix === undefined ? [] : unknownId(`${pointer}/mix`, step.mix, job.mixes, 'mix')),
    ...(step.kind === 'spray' ? unknownId(`${pointer}/coat`, step.coat, job.coats, 'coat') : []),
    ...(step.colour === undefined ? [] : unknownId(`${pointer}/colour`, step.colour, colours, 'colour')),
    ...(step.kind === 'spray' ? otherPanel(`${pointer}/coat`, step.coat, scheme, job) : []),
  ];
}

/** A sprayed coat is planned on one of the scheme's own panels. */
function otherPanel(pointer: string, coatId: string, scheme: SchemeSpec, job: Job): Problem[] {
  const coat = job.coats.find(({ id }) => id === coatId);
  if (coat === undefined || scheme.panels.includes(coat.panel)) return [];
  return [problem(pointer, `= "${coatId}" is planned on panel "${coat.panel}", which this scheme does not cover; give a coat of ${scheme.panels.join(', ')}`)];
}

/** A panel has one scheme. */
function panelProblems(schemes: readonly SchemeSpec[]): Problem[] {
  const first = new Map<string, string>();
  return schemes.flatMap(({ id, panels }, i) => panels.flatMap((panel, k) => {
    const other = first.get(panel);
    first.set(panel, other ?? id);
    return other === undefined ? [] : [problem(`/schemes/${i}/panels/${k}`, `= "${panel}" is in scheme "${other}" already; a panel has one scheme`)];
  }));
}

function hourProblems(hours: readonly HourSpec[]): Problem[] {
  const fall = hours.findIndex(({ at }, i) => i > 0 && !(at > (hours[i - 1] as HourSpec).at));
  return fall < 0 ? [] : [problem(`/hours/${fall}/at`, `= "${(hours[fall] as HourSpec).at}" is not after the time before it, "${(hours[fall - 1] as HourSpec).at}"; give the times rising`)];
}

function workingProblems({ from, to }: WorkingSpec): Problem[] {
  return from < to ? [] : [problem('/working/to', `= "${to}" is not after from = "${from}"; work begins and ends on one day`)];
}
