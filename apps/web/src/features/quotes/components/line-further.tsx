import { cell, type LineForm } from './line-cells.ts';
import type { Drawn } from './line-figures.tsx';
import './quote.css';

function wordsOf(line: LineForm): string {
  const details = cell(line, 'details').replaceAll(/\s+/g, ' ');
  const { length } = line.pictures;
  const pictures = length === 0 ? '' : length === 1 ? '1 picture' : `${length} pictures`;
  return [pictures, details].filter(Boolean).join(', ');
}

/** What of each line opens beside, in a few words, with the way there. */
export function furtherOf(lines: readonly LineForm[], onOpen: ((key: string) => void) | null): Drawn {
  const words = (key: string): string => {
    const line = lines.find((one) => one.key === key);
    return line ? wordsOf(line) : '';
  };
  return {
    shown: ({ key }) => words(key),
    render: ({ key, cells }) =>
      onOpen === null ? (
        words(key)
      ) : (
        <button
          type="button"
          className="line-further"
          aria-label={`Words and pictures of ${cells.description || 'this line'}: ${words(key) || 'none'}`}
          onClick={() => onOpen(key)}
        >
          {words(key) || 'add'}
        </button>
      ),
  };
}
