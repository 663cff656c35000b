import type { Page } from '@playwright/test';

/** One leg of a scripted hand, in panel metres, y up. */
export interface Leg {
  readonly from_m: readonly [number, number];
  readonly to_m: readonly [number, number];
  /** Length of the leg, s. */
  readonly time_s: number;
  /** 0 off, 0.5 air only, 1 spray. */
  readonly trigger: 0 | 0.5 | 1;
}

export type Device = 'mouse' | 'pen' | 'touch';

/** A stroke with a run-in and a run-out, trigger off, on its own line. */
export function stroke(from_m: readonly [number, number], to_m: readonly [number, number], speed_m_s: number, run_m = 0.04): Leg[] {
  const length_m = Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1]);
  const ahead = [((to_m[0] - from_m[0]) / length_m) * run_m, ((to_m[1] - from_m[1]) / length_m) * run_m] as const;
  const before: readonly [number, number] = [from_m[0] - ahead[0], from_m[1] - ahead[1]];
  const after: readonly [number, number] = [to_m[0] + ahead[0], to_m[1] + ahead[1]];
  return [
    { from_m: before, to_m: from_m, time_s: run_m / speed_m_s, trigger: 0 },
    { from_m, to_m, time_s: length_m / speed_m_s, trigger: 1 },
    { from_m: to_m, to_m: after, time_s: run_m / speed_m_s, trigger: 0 },
  ];
}

/** Legs joined by quick moves with the trigger off. */
export function joined(strokes: readonly (readonly Leg[])[], move_s = 0.3): Leg[] {
  return strokes.flatMap((legs, i) => {
    const last = strokes[i - 1]?.at(-1);
    const first = legs[0] as Leg;
    return last === undefined ? [...legs] : [{ from_m: last.to_m, to_m: first.from_m, time_s: move_s, trigger: 0 as const }, ...legs];
  });
}

/**
 * Moves a device over the panel as scripted, in real time: each turn sends one pointer event with the
 * samples since the last one as its coalesced events, each with its own time, so that the hand is
 * exact however late a frame comes. @returns samples sent.
 */
export async function spray(page: Page, legs: readonly Leg[], device: Device = 'mouse', rate = 1000): Promise<number> {
  return page.evaluate(
    async ({ legs: script, device: kind, rate: hz }) => {
      const root = document.querySelector<HTMLElement>('.spray-canvas');
      if (root === null) throw new Error('no panel to spray');
      const box = root.getBoundingClientRect();
      const scale = Number(root.dataset['pxPerM']);
      const client = ([x, y]: readonly [number, number]): [number, number] => [box.left + Number(root.dataset['originX']) + x * scale, box.top + Number(root.dataset['originY']) - y * scale];
      const whole_s = script.reduce((sum, leg) => sum + leg.time_s, 0);
      const at = (time_s: number): { readonly place: [number, number]; readonly trigger: number } => {
        let left_s = time_s;
        for (const leg of script) {
          if (left_s < leg.time_s || leg === script[script.length - 1]) {
            const share = leg.time_s > 0 ? Math.min(1, left_s / leg.time_s) : 1;
            return { place: client([leg.from_m[0] + share * (leg.to_m[0] - leg.from_m[0]), leg.from_m[1] + share * (leg.to_m[1] - leg.from_m[1])]), trigger: leg.trigger };
          }
          left_s -= leg.time_s;
        }
        return { place: client([0, 0]), trigger: 0 };
      };
      const make = (type: string, stamp_ms: number, place: readonly [number, number], trigger: number): PointerEvent => {
        const isDown = trigger > 0;
        const event = new PointerEvent(type, {
          bubbles: true, cancelable: true, composed: true, pointerId: 1, isPrimary: true, pointerType: kind,
          clientX: place[0], clientY: place[1], button: type === 'pointermove' ? -1 : 0, buttons: isDown ? 1 : 0,
          pressure: isDown ? (kind === 'pen' ? (trigger === 1 ? 0.9 : 0.1) : 0.5) : 0, shiftKey: kind === 'mouse' && trigger === 0.5,
        });
        Object.defineProperty(event, 'timeStamp', { value: stamp_ms });
        return event;
      };
      let sent = 0;
      let before = 0;
      const start_ms = performance.now();
      let next = 0;
      const last = Math.floor(whole_s * hz);
      const send = (): void => {
        const now = Math.min(last, Math.floor(((performance.now() - start_ms) / 1000) * hz));
        let batch: PointerEvent[] = [];
        const flush = (): void => {
          const newest = batch.at(-1);
          if (newest === undefined) return;
          const event = make('pointermove', newest.timeStamp, [newest.clientX, newest.clientY], before);
          const samples = batch;
          Object.defineProperty(event, 'getCoalescedEvents', { value: () => samples });
          root.dispatchEvent(event);
          sent += samples.length;
          batch = [];
        };
        for (; next <= now; next++) {
          const stamp_ms = start_ms + (1000 * next) / hz;
          const { place, trigger } = at(next / hz);
          if (trigger !== before) {
            flush();
            if (before === 0) root.dispatchEvent(make('pointerdown', stamp_ms, place, trigger));
            else root.dispatchEvent(make('pointerup', stamp_ms, place, trigger));
            before = trigger;
            sent++;
            continue;
          }
          batch.push(make('pointermove', stamp_ms, place, trigger));
        }
        flush();
      };
      // A browser hands on its input ahead of each frame: so the page's own frame finds all that came before it.
      const askFrame = window.requestAnimationFrame.bind(window);
      window.requestAnimationFrame = (callback) => askFrame((time_ms) => {
        send();
        callback(time_ms);
      });
      while (next <= last) {
        await new Promise((resolve) => setTimeout(resolve, 4));
        send();
      }
      window.requestAnimationFrame = askFrame;
      if (before !== 0) root.dispatchEvent(make('pointerup', performance.now(), at(whole_s).place, 0));
      return sent;
    },
    { legs, device, rate },
  );
}
