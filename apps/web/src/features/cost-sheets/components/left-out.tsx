import { FigureValue } from '../../figures/figure-value.tsx';
import type { Moves } from '../api/work-out-sensitivity.ts';
import type { MovesShape } from './moves-shape.ts';
import type { MovesVoice } from './moves-words.ts';
import './moves-chart.css';

const WHY = {
  zero: 'stand at 0, and a share of nothing is nothing',
  whole: 'count whole things, which do not move by a share',
  definition: 'hold by definition',
} as const;

interface LeftOutProps {
  readonly moves: Moves;
  readonly shape: MovesShape;
  readonly voice: MovesVoice;
}

/** What is not among the bars, and why. */
export function LeftOut({ moves, shape, voice }: LeftOutProps) {
  const { level, broken } = shape;
  const lists = [
    {
      why: 'move nothing within this range: rounding or whole packs take it up',
      ids: level.map(({ figure }) => figure),
    },
    {
      why: 'leave no answer at one end',
      ids: broken.map(({ figure }) => figure),
    },
    ...(['zero', 'whole', 'definition'] as const).map((kind) => ({
      why: WHY[kind],
      ids: moves.still.filter(({ why }) => why === kind).map(({ figure }) => figure),
    })),
  ].filter(({ ids }) => ids.length > 0);
  if (lists.length === 0) return null;
  return (
    <div className="left-out">
      {lists.map(({ why, ids }) => (
        <details key={why}>
          <summary>
            {ids.length === 1 ? '1 value is not drawn; it is of those that' : `${ids.length} values`} {why}
          </summary>
          <ul>
            {ids.map((id) => (
              <li key={id}>
                {voice.table[id]?.label} <FigureValue id={id} isInInches={voice.system === 'imperial'} />
              </li>
            ))}
          </ul>
        </details>
      ))}
    </div>
  );
}
