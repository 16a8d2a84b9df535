export const THEMES = ['system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

/** Also read by public/theme.js, which sets the theme before the first paint. */
const KEY = 'scantling-theme';

function isTheme(text: string | null): text is Theme {
  return THEMES.some((theme) => theme === text);
}

/** The theme chosen on this device. */
export function chosenTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY);
    return isTheme(kept) ? kept : 'system';
  } catch {
    return 'system';
  }
}

/** Shows the theme and keeps the choice on this device, where the browser lets us. */
export function chooseTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // Storage is switched off; the choice then holds until the page is left.
  }
}
