import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { KEY_HELP } from '../../app/practice/hand/gunHand.ts';
import { drill, isMatched, setPrefs, shownValue } from '../../app/practice/practice.ts';
import type { PracticePrefs } from '../../app/practicePrefs.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TickField } from '../fields/TickField.tsx';
import { ScreenMatch } from './ScreenMatch.tsx';

/** Errors that can be had of the distance, m: none, a practised arm's, a beginner's. */
const WANDERS = [
  ['0', 'steady'],
  ['0.012', 'wanders by 12 mm (½ in)'],
  ['0.045', 'wanders by 45 mm (1¾ in)'],
] as const;

const ARMS = [
  ['0.1', 'wrist, 0.1 m'],
  ['0.35', 'elbow, 0.35 m'],
  ['0.6', 'shoulder, 0.6 m'],
] as const;

/** How the gun is held, what is drawn, and how large. */
export function HandForm(): JSX.Element {
  const prefs = state.practice.value;
  const { hand } = prefs;
  const [matching, setMatching] = useState(false);
  const isScreenMatched = isMatched(prefs, window.devicePixelRatio);
  const setHand = (changed: Partial<PracticePrefs['hand']>): void => setPrefs({ hand: { ...hand, ...changed } });
  return (
    <details class="hand-form" open>
      <summary>Gun, panel and screen</summary>
      <div class="hand-fields">
        <ChoiceField id="fan-way" label="Fan" value={hand.fanTurned ? 'flat' : 'upright'} options={[['upright', 'upright, for strokes across'], ['flat', 'turned, for strokes up and down']]} choose={(value) => setHand({ fanTurned: value === 'flat' })} />
        <ChoiceField id="arm" label="Arm" value={hand.mode} options={[['free', 'the whole arm travels: gun square'], ['wrist', 'swings about a pivot: fight the arc']]} choose={(value) => setHand({ mode: value })} />
        {hand.mode === 'wrist' ? <ChoiceField id="pivot" label="Pivot to nozzle" value={nearest(ARMS, hand.armLength_m)} options={ARMS} choose={(value) => setHand({ armLength_m: Number(value) })} /> : null}
        <ChoiceField id="wander" label="Distance" value={nearest(WANDERS, hand.wander.amount_m)} options={WANDERS} hint="Wheel, Page Up and Page Down, a second finger, or the pen's barrel button change it" choose={(value) => setHand({ wander: { ...hand.wander, amount_m: Number(value) } })} />
        <ChoiceField id="touch-trigger" label="Touch trigger" value={hand.touchTrigger} options={[['finger', 'the finger on the panel pulls it'], ['pad', 'two buttons under the panel']]} choose={(value) => setHand({ touchTrigger: value })} />
        <ChoiceField id="live-value" label="Colours" value={shownValue.value} options={[['target', 'film as landed, against the target'], ['wet-now', 'film that lies there now']]} choose={(value) => setPrefs({ value })} />
        <TickField label="Planned lines" on={prefs.guides ?? drill.value.guides} turn={(on) => setPrefs({ guides: on })} />
        <TickField label="Pace: a ring that runs along the planned lines at the speed that is meant" on={prefs.pace} turn={(on) => setPrefs({ pace: on })} />
        <TickField label="Sound: hiss and pace ticks" on={prefs.sound} turn={(on) => setPrefs({ sound: on })} />
        <TickField label="True scale" on={prefs.trueScale && isScreenMatched} hint={isScreenMatched ? 'As long on the glass as on the part.' : 'The screen must be matched to a card first.'} turn={(on) => (isScreenMatched ? setPrefs({ trueScale: on }) : setMatching(true))} />
        <button type="button" onClick={() => setMatching(!matching)} aria-expanded={matching}>{isScreenMatched ? 'Match the screen again' : 'Match the screen to a card'}</button>
      </div>
      {matching ? <ScreenMatch done={() => setMatching(false)} /> : null}
      <details>
        <summary>Mouse, touch, pen, keys, gamepad</summary>
        <p>Mouse: main button sprays; with Shift, or the other button, air only. Touch: the first finger is the gun. Pen: pressure is the trigger, tilt tilts the gun, twist turns the fan. Gamepad: left stick moves, right trigger pulls, right stick tilts.</p>
        <p id="practice-keys">{KEY_HELP}</p>
        <p class="soft">Browsers do not tell how high a pen hovers, so its distance is set by the barrel button.</p>
      </details>
    </details>
  );
}

/** The choice nearest to a value, which another device may have set in between. */
function nearest<Value extends string>(options: readonly (readonly [Value, string])[], value: number): Value {
  const [first] = options as readonly [readonly [Value, string]];
  return options.reduce((best, each) => (Math.abs(Number(each[0]) - value) < Math.abs(Number(best[0]) - value) ? each : best), first)[0];
}
