import { SHARE_SLACK_PERCENT } from './defaults.ts';
import { problem, repeatedIds, unknownId } from './idProblems.ts';
import type { Problem } from './problems.ts';
import type { CoatSpec, Job, MixSpec, SetUpSpec, TargetSpec } from './schema.ts';
import { recordProblems } from './recordReferences.ts';
import { schemeProblems } from './schemeReferences.ts';

/** What a schema cannot say: ids that are unique and exist, limits in their order, shares that add up. */
export function referenceProblems(job: Job): Problem[] {
  const { panels } = job.part;
  return [
    ...repeatedIds('/part/panels', panels),
    ...repeatedIds('/mixes', job.mixes),
    ...repeatedIds('/setUps', job.setUps),
    ...repeatedIds('/coats', job.coats),
    ...repeatedIds('/recordings', job.recordings),
    ...job.mixes.flatMap((mix, i) => mixProblems(`/mixes/${i}`, mix)),
    ...job.setUps.flatMap((setUp, i) => setUpProblems(`/setUps/${i}`, setUp)),
    ...job.coats.flatMap((coat, i) => coatProblems(`/coats/${i}`, coat, job)),
    ...circleProblems(job.coats),
    ...schemeProblems(job),
    ...recordProblems(job),
  ];
}

function coatProblems(pointer: string, coat: CoatSpec, job: Job): Problem[] {
  return [
    ...unknownId(`${pointer}/panel`, coat.panel, job.part.panels, 'panel'),
    ...unknownId(`${pointer}/setUp`, coat.setUp, job.setUps, 'set-up'),
    ...(coat.mix === undefined ? [] : unknownId(`${pointer}/mix`, coat.mix, job.mixes, 'mix')),
    ...overProblems(`${pointer}/over/coat`, coat, job.coats),
    ...(coat.recording === undefined ? [] : unknownId(`${pointer}/recording`, coat.recording, job.recordings, 'recording')),
    ...targetProblems(`${pointer}/target`, coat.target),
  ];
}

/** The coat beneath is there, is another one, and lies on the same panel. */
function overProblems(pointer: string, coat: CoatSpec, coats: readonly CoatSpec[]): Problem[] {
  const beneathId = coat.over?.coat;
  if (beneathId === undefined) return [];
  if (beneathId === coat.id) {
    return [problem(pointer, `= "${coat.id}" is this coat itself; give the coat beneath it, or leave "over" out for a bare panel`)];
  }
  const beneath = coats.find(({ id }) => id === beneathId);
  if (beneath === undefined) return unknownId(pointer, beneathId, coats.filter((each) => each !== coat), 'coat');
  if (beneath.panel === coat.panel) return [];
  return [problem(pointer, `= "${beneathId}" lies on panel "${beneath.panel}", and this coat on "${coat.panel}"; give a coat of the same panel`)];
}

/** Coats that lie over each other in a circle, each circle told once, with its chain. */
function circleProblems(coats: readonly CoatSpec[]): Problem[] {
  const beneath = new Map(coats.map(({ id, over }) => [id, over?.coat]));
  const told = new Set<string>();
  return coats.flatMap((coat, i) => {
    const chain = chainFrom(coat.id, beneath);
    // One link long is a coat over itself, which has its own words.
    if (chain.length < 3 || chain.at(-1) !== coat.id || told.has(coat.id)) return [];
    for (const id of chain) told.add(id);
    return [problem(`/coats/${i}/over/coat`, `makes a circle: ${chainWords(chain)}; let one of these lie on the bare panel by leaving out its "over"`)];
  });
}

/** Ids from a coat down to the bare panel, or to the first that comes again. */
function chainFrom(start: string, beneath: ReadonlyMap<string, string | undefined>): string[] {
  const chain = [start];
  const seen = new Set(chain);
  for (let next = beneath.get(start); next !== undefined; next = beneath.get(next)) {
    chain.push(next);
    if (seen.has(next)) break;
    seen.add(next);
  }
  return chain;
}

/** A chain for one line: its ends, where it is long. */
function chainWords(chain: readonly string[]): string {
  const shown = chain.length <= 8 ? chain : [...chain.slice(0, 4), '…', ...chain.slice(-3)];
  return shown.join(' over ');
}

function mixProblems(pointer: string, mix: MixSpec): Problem[] {
  const sum = mix.thinner.reduce((total, { percent }) => total + percent, 0);
  // The check is on the sum as shown, so that 99.9 passes although its binary sum is a hair less.
  const shownSum = Number(sum.toFixed(6));
  if (Math.abs(shownSum - 100) <= SHARE_SLACK_PERCENT + 1e-9) return [];
  const shares = mix.thinner.map(({ percent }) => percent).join(' + ');
  return [problem(`${pointer}/thinner`, `has shares ${shares} = ${shownSum} %, not 100 % (± ${SHARE_SLACK_PERCENT}); give shares of the whole thinner`)];
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
