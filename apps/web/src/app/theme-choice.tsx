import { useState } from 'react';
import { Menu } from '../components/menu.tsx';
import { chooseTheme, chosenTheme, THEMES, type Theme } from '../lib/theme.ts';

const WORDS: Readonly<Record<Theme, string>> = { system: 'As the system', light: 'Paper', dark: 'Slate' };

/** Light, dark or as the system says; kept on the device. */
export function ThemeChoice() {
  const [theme, setTheme] = useState(chosenTheme);
  const acts = THEMES.map((one) => ({
    id: one,
    label: WORDS[one],
    onAct: () => {
      chooseTheme(one);
      setTheme(one);
    },
  }));
  return <Menu look="quiet" label={`Ground: ${WORDS[theme].toLowerCase()}`} acts={acts} />;
}
