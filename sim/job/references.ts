import { nearestWord } from '../base/nearestWord.ts';
import { valueWords, type Problem } from './problems.ts';
import type { CoatSpec, Job, SetUpSpec, TargetSpec } from './schema.ts';

/** What a schema cannot say: ids that are unique and exist, limits in their order. */
export function referenceProblems(job: Job): Problem[] {
  const { panels } = job.part;
  return [
    ...repeatedIds('/part/panels', panels),
    ...repeatedIds('/setUps', job.setUps),
    ...repeatedIds('/coats', job.coats),
    ...repeatedIds('/recordings', job.recordings),
    ...job.setUps.flatMap((setUp, i) => setUpProblems(`/setUps/${i}`, setUp)),
    ...job.coats.flatMap((coat, i) => coatProblems(`/coats/${i}`, coat, job)),
  ];
}

function repeatedIds(pointer: string, items: readonly { readonly id: string }[]): Problem[] {
  const first = new Map<string, number>();
  return items.flatMap(({ id }, i) => {
    const earlier = first.get(id);
    if (earlier === undefined) {
      first.set(id, i);
      return [];
    }
    return [problem(`${pointer}/${i}/id`, `= "${id}" is also the id of ${pointer}/${earlier}; give each its own id`)];
  });
}

function coatProblems(pointer: string, coat: CoatSpec, job: Job): Problem[] {
  return [
    ...unknownId(`${pointer}/panel`, coat.panel, job.part.panels, 'panel'),
    ...unknownId(`${pointer}/setUp`, coat.setUp, job.setUps, 'set-up'),
    ...(coat.recording === undefined ? [] : unknownId(`${pointer}/recording`, coat.recording, job.recordings, 'recording')),
    ...targetProblems(`${pointer}/target`, coat.target),
  ];
}

function unknownId(pointer: string, id: string, items: readonly { readonly id: string }[], what: string): Problem[] {
  const ids = items.map((item) => item.id);
  if (ids.includes(id)) return [];
  const near = nearestWord(id, ids);
  const some = ids.slice(0, 8).join(', ');
  const advice = near !== null ? `did you mean "${near}"?` : ids.length === 0 ? `the job has no ${what}; add it or leave this key out` : `give one of ${some}`;
  return [problem(pointer, `= ${valueWords(id)} is the id of no ${what}; ${advice}`)];
}

function targetProblems(pointer: string, target: TargetSpec): Problem[] {
  const { min_percent, max_percent, holiday_percent } = target;
  const problems: Problem[] = [];
  if (!(min_percent < max_percent)) {
    problems.push(problem(`${pointer}/min_percent`, `= ${min_percent} is not below max_percent = ${max_percent}; leave room between them, such as 80 and 120`));
  }
  if (!(holiday_percent < min_percent)) {
    problems.push(problem(`${pointer}/holiday_percent`, `= ${holiday_percent} is not below min_percent = ${min_percent}; a holiday is thinner than a thin lap, such as 25`));
  }
  return problems;
}

function setUpProblems(pointer: string, setUp: SetUpSpec): Problem[] {
  const problems: Problem[] = [];
  const [nearest, farthest] = setUp.distanceRange_mm;
  if (!(nearest < farthest)) {
    problems.push(problem(`${pointer}/distanceRange_mm`, `= [${nearest}, ${farthest}] does not rise; give the nearest distance first`));
  }
  const { profile } = setUp.fan;
  if (profile.family === 'table') problems.push(...tableProblems(`${pointer}/fan/profile`, profile.place_mm, profile.film));
  return problems;
}

function tableProblems(pointer: string, place_mm: readonly number[], film: readonly number[]): Problem[] {
  if (place_mm.length !== film.length) {
    return [problem(`${pointer}/film`, `has ${film.length} values for ${place_mm.length} places; give one film value for each place`)];
  }
  const fall = place_mm.findIndex((place, i) => i > 0 && !(place > (place_mm[i - 1] as number)));
  if (fall > 0) {
    return [problem(`${pointer}/place_mm/${fall}`, `= ${place_mm[fall]} is not above the place before it, ${place_mm[fall - 1]}; give the places rising`)];
  }
  if (!film.some((value) => value > 0)) return [problem(`${pointer}/film`, 'has no film above 0; give the measured film')];
  return [];
}

function problem(pointer: string, words: string): Problem {
  return { pointer, text: `${pointer} ${words}` };
}
