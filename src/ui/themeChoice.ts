import { scopedName, siteScope } from '../notebook/siteScope.ts';

export type ThemeChoice = 'system' | 'light' | 'dark';

/** Of the time when all copies of the site on a host shared it: what it says is where each begins. */
const SHARED_KEY = 'theme';
const darkQuery = '(prefers-color-scheme: dark)';

/** The choice made on this device; `system` where none was made or storage is refused. */
export function themeChoice(): ThemeChoice {
  try {
    const stored = localStorage.getItem(ownKey()) ?? localStorage.getItem(SHARED_KEY);
    return stored === 'light' || stored === 'dark' ? stored : 'system';
  } catch {
    return 'system';
  }
}

/** Remembers the choice where that is allowed; it holds for this visit in any case. */
export function chooseTheme(choice: ThemeChoice, root: HTMLElement): void {
  try {
    localStorage.setItem(ownKey(), choice);
  } catch {
    // Storage is refused: the page says so elsewhere, and a theme isn't worth a second message.
  }
  show(choice, root);
}

/** Takes the choice out of the browser. */
export function forgetTheme(): void {
  try {
    localStorage.removeItem(ownKey());
    localStorage.removeItem(SHARED_KEY);
  } catch {
    // Storage is refused: nothing was remembered.
  }
}

/** Shows the chosen theme and follows the system's where that was chosen. */
export function applyTheme(root: HTMLElement): void {
  show(themeChoice(), root);
  matchMedia(darkQuery).addEventListener('change', () => show(themeChoice(), root));
}

function show(choice: ThemeChoice, root: HTMLElement): void {
  const isDark = choice === 'dark' || (choice === 'system' && matchMedia(darkQuery).matches);
  root.dataset['theme'] = isDark ? 'dark' : 'light';
}

function ownKey(): string {
  return scopedName('theme', siteScope());
}
