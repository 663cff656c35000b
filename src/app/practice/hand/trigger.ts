import { AIR_ONLY } from '../../../../sim/index.ts';

export { AIR_ONLY };
export const FULL = 1;

/** What can pull the trigger: mouse, pen or finger; keys; a gamepad; the pad on the screen. */
type Puller = 'pointer' | 'keys' | 'gamepad' | 'pad';

const PULLERS: readonly Puller[] = ['pointer', 'keys', 'gamepad', 'pad'];

/** The gun's trigger under several fingers: the strongest pull counts. */
export class Trigger {
  private readonly pulls: Record<Puller, number> = { pointer: 0, keys: 0, gamepad: 0, pad: 0 };
  /** Pullers that were still held when the trigger was closed: they must let go first. */
  private readonly mustLetGo: Record<Puller, boolean> = { pointer: false, keys: false, gamepad: false, pad: false };

  get amount(): number {
    const { pointer, keys, gamepad, pad } = this.pulls;
    return Math.max(pointer, keys, gamepad, pad);
  }

  of(puller: Puller): number {
    return this.pulls[puller];
  }

  set(puller: Puller, amount: number): void {
    if (amount === 0) this.mustLetGo[puller] = false;
    this.pulls[puller] = this.mustLetGo[puller] ? 0 : amount;
  }

  /** Closes; a button still held opens nothing until it was let go. */
  close(): void {
    for (const puller of PULLERS) {
      this.mustLetGo[puller] ||= this.pulls[puller] > 0;
      this.pulls[puller] = 0;
    }
  }

  /** Closes until the next news: what is held is not known, as after sleep. */
  forget(): void {
    for (const puller of PULLERS) this.pulls[puller] = 0;
  }
}
