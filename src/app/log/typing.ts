import { ONE_CHANGE_S } from '../../../sim/index.ts';

/** What is being typed: its key, the record as it was before, as the last keystroke left it, and when the first was, ms. */
export interface Typing<T> {
  readonly key: string;
  readonly since: T;
  readonly last: T;
  readonly from_ms: number;
}

/** The typing that a keystroke goes on with, or begins: other keys, another change between and two minutes end one. Its `last` is the record before the keystroke. */
export function typingOn<T>(typing: Typing<T> | null, key: string, record: T): Typing<T> {
  const passed_ms = typing === null ? 0 : Date.now() - typing.from_ms;
  const goesOn = typing !== null && typing.key === key && typing.last === record && passed_ms >= 0 && passed_ms <= ONE_CHANGE_S * 1000;
  return goesOn ? typing : { key, since: record, last: record, from_ms: Date.now() };
}
