import './sheetTabs.css';
import type { JSX } from 'preact';

export interface SheetTabsProps<Tab extends string> {
  /** Id of the element that shows the sheets: `practice-sheet`. */
  readonly sheet: string;
  readonly label: string;
  readonly words: Readonly<Record<Tab, string>>;
  readonly tabs: readonly Tab[];
  readonly shown: Tab;
  readonly show: (tab: Tab) => void;
}

/** The names of a stage's sheets, one of which is shown. Arrow keys go from sheet to sheet, Home and End to the first and the last. */
export function SheetTabs<Tab extends string>({ sheet, label, words, tabs, shown, show }: SheetTabsProps<Tab>): JSX.Element {
  const turnSheet = (event: KeyboardEvent): void => {
    const turn = TURNS[event.key];
    if (turn === undefined) return;
    const next = tabs[(turn(tabs.indexOf(shown)) + tabs.length) % tabs.length] as Tab;
    show(next);
    document.getElementById(tabId(sheet, next))?.focus();
    event.preventDefault();
  };
  return (
    <div class="sheet-tabs" role="tablist" aria-label={label} onKeyDown={turnSheet}>
      {tabs.map((each) => (
        <button
          key={each}
          type="button"
          role="tab"
          id={tabId(sheet, each)}
          aria-selected={shown === each}
          aria-controls={sheet}
          tabIndex={shown === each ? 0 : -1}
          onClick={() => show(each)}
        >
          {words[each]}
        </button>
      ))}
    </div>
  );
}

/** Id of a sheet's tab, which names the sheet. */
export function tabId(sheet: string, tab: string): string {
  return `${sheet}-tab-${tab}`;
}

/** Where a key leads from one sheet. */
const TURNS: Readonly<Record<string, (at: number) => number>> = {
  ArrowLeft: (at) => at - 1,
  ArrowRight: (at) => at + 1,
  Home: () => 0,
  End: () => -1,
};
