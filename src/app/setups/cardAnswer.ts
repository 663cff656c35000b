import { batch, computed, effect, signal } from '@preact/signals';
import type { FitFamily, SetUpSpec } from '../../../sim/index.ts';
import { Stale, WorkerLost } from '../../worker/client.ts';
import type { CardReply } from '../../worker/cardMessages.ts';
import { latestOnly } from '../latest.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';
import { askPool } from './pool.ts';
import { setUps, shownSetUp } from './setUps.ts';

/** The family that a card's fan is taken from: the best, one by name, or the readings as they are. */
export type FamilyChoice = 'best' | FitFamily | 'as-measured';

/** What the card of the set-up shown comes to. */
export const cardAnswer = {
  /** The set-up that was asked of, as it stood then, and the answer; null while there is none. */
  told: signal<{ readonly setUp: SetUpSpec; readonly reply: CardReply } | null>(null),
  working: signal(false),
};

const choices = signal<Readonly<Record<string, FamilyChoice>>>({});

/** The family chosen for the set-up shown. */
export const shownChoice = computed<FamilyChoice>(() => choices.value[shownSetUp.value.id] ?? 'best');

export function chooseFamily(setUp: string, choice: FamilyChoice): void {
  choices.value = { ...choices.peek(), [setUp]: choice };
}

interface AskedCard {
  readonly setUp: SetUpSpec;
  readonly choice: FamilyChoice;
  readonly seed: number;
}

const seed = computed(() => state.job.value.seed);

/** Works the card out again whenever it, its set-up or the family chosen changes. @returns what stops that. */
export function followCard(): () => void {
  return effect(() => {
    const asked = { setUp: shownSetUp.value, choice: shownChoice.value, seed: seed.value };
    if (asked.setUp.card === undefined) cardAnswer.told.value = null;
    else askCard(asked);
  });
}

const askCard = latestOnly(async ({ setUp, choice, seed: by }: AskedCard) => {
  const isShown = (): boolean => shownSetUp.peek() === setUp && shownChoice.peek() === choice;
  cardAnswer.working.value = true;
  try {
    const family = choice === 'best' || choice === 'as-measured' ? null : choice;
    const reply = await askPool(0, 'cardFit', { setUp, family, seed: by });
    if (isShown()) batch(() => (cardAnswer.told.value = { setUp, reply }));
  } catch (thrown) {
    if (!(thrown instanceof Stale) && !(thrown instanceof WorkerLost) && isShown()) setUps.problem.value = problemOf('The card could not be worked out', thrown);
  } finally {
    cardAnswer.working.value = false;
  }
});
