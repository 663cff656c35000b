import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';

/** A notice whose script is fetched after the first film; null until then. */
export const lateNotice = signal<ComponentType | null>(null);
