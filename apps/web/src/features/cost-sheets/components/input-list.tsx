import type { FigureTable } from '@scantling/figures';
import { useId, useMemo, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { TextInput } from '../../../components/text-input.tsx';
import { leafWords } from '../../figures/leaf-text.ts';
import { TryField } from '../../figures/try-field.tsx';
import { useTrying } from '../../figures/trying-context.ts';
import { foundInputs, type InputGroup, inputGroups } from './input-groups.ts';
import './input-list.css';
import './trial.css';

/** More rows than this are not drawn at once; the search leads to the others. */
const MOST_ROWS = 60;

interface InputListProps {
  /** As it stands. */
  readonly table: FigureTable;
}

/** Every input the sheet rests on with a field for another value, so that nobody digs for it in workings. */
export function InputList({ table }: InputListProps) {
  const groups = useMemo(() => inputGroups(table), [table]);
  const [search, setSearch] = useState('');
  const found = foundInputs(groups, search);
  const isSearched = search.trim() !== '';
  return (
    <div className="input-list">
      <TextInput
        label="Find an input"
        type="search"
        hint="Any words of its name or of where it comes from: oak price, sand run, owner pay"
        value={search}
        onChange={setSearch}
      />
      <p className="visually-hidden" role="status">
        {isSearched ? `${found.reduce((sum, { leaves }) => sum + leaves.length, 0)} inputs found` : ''}
      </p>
      <div className="input-groups">
        {found.map((group) => (
          <Group key={`${group.title} ${isSearched}`} group={group} isOpenFirst={isSearched} />
        ))}
        {found.length === 0 && <p>No input has these words.</p>}
      </div>
    </div>
  );
}

interface GroupProps {
  readonly group: InputGroup;
  readonly isOpenFirst: boolean;
}

function Group({ group, isOpenFirst }: GroupProps) {
  const [isOpen, setIsOpen] = useState(isOpenFirst);
  const { locale } = useLocale();
  const panel = useId();
  const system = useTrying()?.system ?? 'metric';
  const { title, leaves, isShopWide } = group;
  return (
    <section className="input-group" aria-label={title}>
      <h3>
        <button
          type="button"
          className="input-group-head"
          aria-expanded={isOpen}
          aria-controls={panel}
          onClick={() => setIsOpen(!isOpen)}
        >
          <span>{title}</span>
          <span className="trial-note">
            {leaves.length}
            {isShopWide ? ', of the whole shop: other pieces rest on them too' : ''}
          </span>
        </button>
      </h3>
      {isOpen && (
        <div id={panel} className="input-rows">
          {leaves.slice(0, MOST_ROWS).map((leaf) => (
            <div key={leaf.id} className="input-row">
              <span>
                {leaf.label}
                <span className="trial-note">{leaf.source?.text}</span>
              </span>
              <span className="input-value">{leafWords(leaf, leaf.value, system, locale)}</span>
              <TryField leaf={leaf} />
            </div>
          ))}
          {leaves.length > MOST_ROWS && (
            <p className="trial-note">{leaves.length - MOST_ROWS} more: find them by words of their names.</p>
          )}
        </div>
      )}
    </section>
  );
}
