import type { Choice } from '../choice-list.tsx';
import { choiceNamed, choicesFor, type EditColumn } from './edit-column.ts';

/** Choices that are drawn at once; more words find the rest. */
export const MOST_SHOWN = 60;

/** The word that is being typed: the whole text, or its last word where several can be chosen. */
export function wordIn(column: EditColumn, text: string): string {
  return column.kind === 'choices' ? (text.split(/\s+/).at(-1) ?? '') : text;
}

/** The choices that fit what is typed; all of them while nothing was typed yet. */
export function offered(column: EditColumn, text: string, isTyped: boolean): readonly Choice[] {
  if (column.choices === undefined) return [];
  return isTyped ? choicesFor(column.choices, wordIn(column, text)) : column.choices;
}

/** The text with the choice in place of the word that is being typed. */
export function withChoice(column: EditColumn, text: string, choice: Choice): string {
  if (column.kind !== 'choices') return choice.id;
  const words = text.split(/\s+/).filter(Boolean);
  const isNamed = words.includes(choice.id);
  const kept = choiceNamed(column.choices ?? [], words.at(-1) ?? '') === null ? words.slice(0, -1) : words;
  return [...kept, ...(isNamed ? [] : [choice.id]), ''].join(' ');
}
