import { computed, effect, signal } from '@preact/signals';
import { state } from './state.ts';

const systemDark = matchMedia('(prefers-color-scheme: dark)');
const systemIsDark = signal(systemDark.matches);

/** Whether the sheet is dark now. */
export const darkNow = computed(() => (state.theme.value === 'system' ? systemIsDark.value : state.theme.value === 'dark'));

/** Puts the reader's choice of paper on the page and follows the system's. */
export function followTheme(): void {
  systemDark.addEventListener('change', (event) => (systemIsDark.value = event.matches));
  effect(() => {
    const root = document.documentElement;
    if (state.theme.value === 'system') delete root.dataset['theme'];
    else root.dataset['theme'] = state.theme.value;
  });
}
