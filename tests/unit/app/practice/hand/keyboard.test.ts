import { describe, expect, it } from 'vitest';
import { KEY_HELP } from '../../../../../src/app/practice/hand/gunHand.ts';
import { HandRig } from './handRig.ts';

const DEGREE = Math.PI / 180;
const rounded = (values: readonly number[], unit: number) => values.map((value) => Math.round(value / unit) + 0);

describe('the keyboard', () => {
  it('starts in the middle and goes full speed times the time held, whatever the frames', () => {
    for (const frame_ms of [7, 16, 33]) {
      const rig = new HandRig();
      rig.run(0, 90, frame_ms);
      rig.key('keydown', 'ArrowRight', 100);
      expect(rounded([rig.last.x_m, rig.last.y_m], 1e-6)).toEqual([400_000, 300_000]);
      rig.run(104, 895, frame_ms);
      rig.key('keyup', 'ArrowRight', 900);
      rig.run(904, 1500, frame_ms);
      expect(rig.last.x_m).toBeCloseTo(0.4 + 0.4 * 0.8, 6);
      expect(rig.last.y_m).toBeCloseTo(0.3, 6);
    }
  });

  it('stands for opposite keys, keeps the speed on a diagonal, and does not mind key repeat', () => {
    const rig = new HandRig();
    rig.key('keydown', 'ArrowLeft', 0);
    rig.key('keydown', 'ArrowRight', 0);
    rig.run(16, 400);
    expect(rig.last.x_m).toBeCloseTo(0.4, 6);
    rig.key('keyup', 'ArrowLeft', 400);
    rig.key('keydown', 'ArrowUp', 400);
    for (let time_ms = 416; time_ms <= 1200; time_ms += 16) {
      rig.key('keydown', 'ArrowUp', time_ms, { repeat: true });
      rig.key('keydown', 'ArrowUp', time_ms);
      rig.run(time_ms, time_ms);
    }
    rig.key('keyup', 'ArrowRight', 1200);
    rig.key('keyup', 'ArrowUp', 1200);
    rig.run(1216, 1600);
    expect(Math.hypot(rig.last.x_m - 0.4, rig.last.y_m - 0.3)).toBeCloseTo(0.4 * 0.8, 6);
    expect(rig.last.x_m - 0.4).toBeCloseTo(rig.last.y_m - 0.3, 6);
  });

  it('pulls the trigger at the time of the key, not of the frame', () => {
    const rig = new HandRig();
    rig.key('keydown', ' ', 3);
    rig.key('keydown', 'Shift', 5, { shiftKey: true });
    rig.key('keyup', 'Shift', 8);
    rig.key('keyup', ' ', 11);
    rig.key('keydown', 'x', 13);
    rig.key('keydown', 'Shift', 14, { shiftKey: true });
    rig.key('keyup', 'X', 15, { shiftKey: true });
    rig.key('keyup', 'Shift', 16);
    expect(rig.rows.map((row) => [Math.round(row.t_s * 1000), row.trigger])).toEqual([[0, 1], [2, 0.5], [5, 1], [8, 0], [10, 0.5], [11, 0.5], [12, 0]]);
  });

  it('steps distance and tilt once a press', () => {
    const rig = new HandRig();
    for (const key of ['PageUp', 'PageUp', ']', '[', 'PageDown', ']']) rig.press(key, 0);
    for (const key of ['d', 'd', 'a', 'w', 's', 's']) rig.press(key, 10);
    rig.key('keydown', 'D', 12, { repeat: true });
    expect(rig.last.z_m).toBeCloseTo(0.21, 6);
    expect(rig.last.yaw_rad).toBeCloseTo(2 * DEGREE, 9);
    expect(rig.last.pitch_rad).toBeCloseTo(-2 * DEGREE, 9);
    rig.press('r', 20);
    expect([rig.last.yaw_rad, rig.last.pitch_rad]).toEqual([0, 0]);
  });

  it('tells the page of fan, pivot and speed that it changed', () => {
    const rig = new HandRig();
    for (const key of ['f', '.', '.', ',', '+', '-', '-']) rig.press(key, 0);
    expect(rig.settingsSeen.at(-1)).toMatchObject({ fanTurned: true, pivotX_m: 0.6, keySpeed_m_s: 0.35 });
    expect(rig.settingsSeen).toHaveLength(7);
    expect(rig.last.fan_rad).toBe(0);
    for (let i = 0; i < 50; i++) rig.press('-', 10 + i);
    expect(rig.settingsSeen.at(-1)?.keySpeed_m_s).toBe(0.05);
  });

  it('leaves other keys and the browser’s own to the page', () => {
    const rig = new HandRig();
    const tab = rig.key('keydown', 'Tab', 0);
    const shortcut = rig.key('keydown', 'r', 1, { ctrlKey: true });
    expect([tab.defaultPrevented, shortcut.defaultPrevented]).toEqual([false, false]);
    expect(rig.key('keydown', ' ', 2).defaultPrevented).toBe(true);
  });

  it('lets go of everything when the focus goes elsewhere', () => {
    const rig = new HandRig();
    rig.key('keydown', ' ', 0);
    rig.key('keydown', 'ArrowUp', 0);
    rig.run(16, 200);
    rig.root.dispatchEvent(Object.defineProperty(new Event('blur'), 'timeStamp', { value: 208 }));
    const { y_m } = rig.last;
    expect(rig.last.trigger).toBe(0);
    rig.run(216, 600);
    expect(rig.last).toMatchObject({ y_m, trigger: 0 });
  });

  it('says every key in the help', () => {
    for (const word of ['Arrow keys', 'Space', 'Shift', 'X', 'Page Up', 'Page Down', ']', '[', 'D and A', 'W and S', 'R ', 'F ', 'Comma', 'full stop', 'Plus', 'minus']) {
      expect(KEY_HELP).toContain(word);
    }
  });
});
