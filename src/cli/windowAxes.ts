import { CrosscoatError, parseQuantity, usualRange, type CoatSetting, type QuantityName, type WindowAxis, type WindowSide } from '../../sim/index.ts';

/** What each axis is typed in. */
const TYPED: Readonly<Record<WindowAxis, readonly [quantity: QuantityName, unit: string, example: string]>> = {
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
  const ends = text.slice(colon + 1).split('..');
  const [, , example] = TYPED[axis];
  if (ends.length !== 2) throw new CrosscoatError('unit', `${option} = "${text}" has no two ends; give them as ${axis}:${example}`);
  return { axis, low: endOf(option, axis, ends[0] as string), high: endOf(option, axis, ends[1] as string), count };
}

function axisOf(option: string, name: string): WindowAxis {
  if (Object.hasOwn(TYPED, name)) return name as WindowAxis;
  throw new CrosscoatError('not-found', `${option} = "${name}" is no axis of a working window; give ${Object.keys(TYPED).join(', ')}`);
}

function endOf(option: string, axis: WindowAxis, text: string): number {
  const [quantity, unit, example] = TYPED[axis];
  try {
    return parseQuantity(text.trim(), quantity, unit);
  } catch (error) {
    if (!(error instanceof CrosscoatError)) throw error;
    throw new CrosscoatError('unit', `${option} = ${error.message}, as in ${axis}:${example}`);
  }
}
