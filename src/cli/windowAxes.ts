import { CrosscoatError, usualRange, type CoatSetting, type WindowAxis, type WindowSide } from '../../sim/index.ts';
import { rangeOf, type TypedQuantity } from './optionValues.ts';

/** What each axis is typed in. */
const TYPED: Readonly<Record<WindowAxis, TypedQuantity>> = {
  distance: ['length', 'mm', '150mm..300mm'],
  speed: ['speed', 'm/s', '0.2m/s..0.6m/s'],
  overlap: ['ratio', '%', '30%..70%'],
  fluid: ['flow', 'mL/min', '100mL/min..250mL/min'],
  thinner: ['ratio', '', '0..1'],
  temperature: ['temperature', '°C', '15C..30C'],
  humidity: ['ratio', '%', '30%..80%'],
};

/**
 * One side of a window: an axis's name, with or without its ends behind a colon (`distance:150mm..300mm`); without them
 * its usual range.
 * @throws CrosscoatError `not-found` for an unknown axis; `unit` for ends that are none.
 */
export function parseSide(option: string, text: string, setting: CoatSetting, count: number): WindowSide {
  const colon = text.indexOf(':');
  const axis = axisOf(option, colon < 0 ? text : text.slice(0, colon));
  if (colon < 0) {
    const [low, high] = usualRange(setting, axis);
    return { axis, low, high, count };
  }
  const [name, unit, example] = TYPED[axis];
  const [low, high] = rangeOf(option, text.slice(colon + 1), [name, unit, `${axis}:${example}`]);
  return { axis, low, high, count };
}

function axisOf(option: string, name: string): WindowAxis {
  if (Object.hasOwn(TYPED, name)) return name as WindowAxis;
  throw new CrosscoatError('not-found', `${option} = "${name}" is no axis of a working window; give ${Object.keys(TYPED).join(', ')}`);
}
