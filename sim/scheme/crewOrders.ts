import type { DayChain } from './dayTask.ts';

/** An order in which the steps of all chains are given their places. */
export interface CrewOrder {
  /** Place of a chain for each step: its next one. */
  readonly turns: readonly number[];
  /** Whether a step may go before steps that were given their places earlier. */
  readonly fillsGaps: boolean;
}

/** Above this many chains not every order of them is tried: their number grows as the factorial. */
const ALL_ORDERS_TO = 4;

/**
 * Orders worth trying. Chain by chain, the later ones into the gaps that the earlier leave: all orders of up to four chains; of more the
 * longest first, and each other one put before it. And step by step: the longest remaining first, the usual rule of list scheduling
 * (R.L. Graham, SIAM J. Appl. Math. 17, 416, 1969, from memory), and the one first that could be begun first. Lengths are those stated
 * for 70 °F, or the model's where they are longer. Every order is fixed by the chains alone.
 */
export function crewOrders(chains: readonly DayChain[]): readonly CrewOrder[] {
  const spans = chains.map(spansOf);
  const length = (place: number): number => spans[place]?.reduce((sum, span) => sum + span, 0) ?? 0;
  const longest = chains.map((_, place) => place).sort((a, b) => length(b) - length(a) || a - b);
  const byChain = longest.length <= ALL_ORDERS_TO ? orderings(longest) : longest.map((first) => [first, ...longest.filter((each) => each !== first)]);
  const steps = longest.flatMap((place) => (chains[place] as DayChain).tasks.map((_, k) => {
    const head = (spans[place] as readonly number[]).slice(0, k).reduce((sum, span) => sum + span, 0);
    return { place, head, tail: length(place) - head };
  }));
  return [
    ...byChain.map((order) => ({ turns: order.flatMap((place) => (chains[place] as DayChain).tasks.map(() => place)), fillsGaps: true })),
    ...(chains.length < 2 ? [] : [
      { turns: [...steps].sort((a, b) => b.tail - a.tail).map(({ place }) => place), fillsGaps: false },
      { turns: [...steps].sort((a, b) => a.head - b.head).map(({ place }) => place), fillsGaps: false },
    ]),
  ];
}

/** From the start of each task to the earliest start of the next, min at 70 °F. */
function spansOf({ tasks }: DayChain): number[] {
  return tasks.map(({ work_min, wait_min, modelWait_min }) => work_min + Math.max(wait_min, modelWait_min ?? 0));
}

/** All orderings, the given one first. */
function orderings(places: readonly number[]): (readonly number[])[] {
  if (places.length < 2) return [places];
  return places.flatMap((first) => orderings(places.filter((each) => each !== first)).map((rest) => [first, ...rest]));
}
