import { computed, effect, signal } from '@preact/signals';
import type { FitFamily, SetUpSpec } from '../../../sim/index.ts';
import type { CardReply, CardRequest } from '../../worker/cardMessages.ts';
import { isDropped } from '../../worker/client.ts';
import { mix } from '../document.ts';
import { latestOnly } from '../latest.ts';
import { problemOf } from '../problem.ts';
import { state } from '../state.ts';
import { cardPhoto } from './cardPhoto.ts';
import { askPool } from './pool.ts';
import { setUps, shownSetUp } from './setUps.ts';

/** The family that a set-up's fan is taken from: the best, one by name, or the readings as they are. */
export type FamilyChoice = 'best' | FitFamily | 'table';

/** What the card of the set-up shown comes to. */
export const cardAnswer = {
  /** The set-up that was asked of, as it stood then, and the answer; null while there is none. */
  told: signal<{ readonly setUp: SetUpSpec; readonly reply: CardReply } | null>(null),
  working: signal(false),
};

/** By set-up; kept nowhere, since what is used of a card is in the job. */
const choices = signal<Readonly<Record<string, FamilyChoice>>>({});

/** The family chosen for the set-up shown. */
export const shownChoice = computed<FamilyChoice>(() => choices.value[shownSetUp.value.id] ?? 'best');

export function chooseFamily(choice: FamilyChoice): void {
  choices.value = { ...choices.peek(), [shownSetUp.peek().id]: choice };
}

/** The spot of the photograph that the card's readings were taken from; null for readings of another kind. */
const spot = computed(() => {
  const used = cardPhoto.used.value;
  return used !== null && used.text === shownSetUp.value.card?.readings ? used.fan.spot : null;
});

const seed = computed(() => state.job.value.seed);

/** Works the card out again whenever what it depends on changes. @returns what stops that. */
export function followCard(): () => void {
  return effect(() => {
    const [setUp, choice] = [shownSetUp.value, shownChoice.value];
    const asked = { setUp, mix: mix.value, family: choice === 'best' ? null : choice, spot: spot.value, seed: seed.value };
    if (setUp.card === undefined) cardAnswer.told.value = null;
    else askCard(asked);
  });
}

const askCard = latestOnly(async (asked: CardRequest) => {
  const { setUp } = asked;
  const isShown = (): boolean => shownSetUp.peek() === setUp;
  cardAnswer.working.value = true;
  try {
    const reply = await askPool(0, 'cardFit', asked);
    if (isShown()) cardAnswer.told.value = { setUp, reply };
  } catch (thrown) {
    if (!isDropped(thrown) && isShown()) setUps.problem.value = problemOf('The card could not be worked out', thrown);
  } finally {
    cardAnswer.working.value = false;
  }
});
