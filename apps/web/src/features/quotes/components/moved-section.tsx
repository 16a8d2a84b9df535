import type { QuoteToday } from '@scantling/contracts';
import { Section } from '../../../components/sheet.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import { movedLeaves } from './leaf-changes.ts';
import './quote.css';

const MOST_LEAVES = 60;
const inToday = (id: string): string => mergedId('today', id);

/** What has moved since it was sent, the largest move first, and what it leaves now. */
export function MovedSection({ today }: { readonly today: QuoteToday }) {
  const leaves = movedLeaves(today);
  const problems = today.lines.filter(({ problem }) => problem !== null);
  const { whenSent, now } = today;
  const sides = [
    ['Cost', whenSent.cost, now.cost, false],
    ['Left over', whenSent.profit, now.profit, false],
    ['Margin', whenSent.margin, now.margin, true],
  ] as const;
  return (
    <section id="moved">
      <Section
        title="What has moved since"
        note={`costed again at today's prices and rates, ${today.today}; what was sent does not change`}
      >
        <table className="moved-leaves">
          <thead>
            <tr>
              <th scope="col">What it leaves</th>
              <th scope="col" className="numeric">
                When sent, {today.sentOn}
              </th>
              <th scope="col" className="numeric">
                Today
              </th>
            </tr>
          </thead>
          <tbody>
            {sides.map(([label, then, current, isPercent]) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td className="numeric">
                  {then === null ? 'none' : <FigureValue id={inToday(then)} isPercent={isPercent} />}
                </td>
                <td className="numeric">
                  {current === null ? 'none' : <FigureValue id={inToday(current)} isPercent={isPercent} />}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {problems.map(({ id, description, problem }) => (
          <p key={id} className="reckoning-warning">
            <strong>{description} cannot be costed today:</strong> {problem} Its cost when sent stands in for
            it.
          </p>
        ))}
        {leaves.length === 0 ? (
          <p>No price, rate or size it rests on has moved.</p>
        ) : (
          <table className="moved-leaves">
            <thead>
              <tr>
                <th scope="col">What moved, the largest first</th>
                <th scope="col" className="numeric">
                  Then
                </th>
                <th scope="col" className="numeric">
                  Now
                </th>
              </tr>
            </thead>
            <tbody>
              {leaves.slice(0, MOST_LEAVES).map(({ key, label, old, now: current }) => (
                <tr key={key}>
                  <th scope="row">{label}</th>
                  <td className="numeric">
                    {old === null ? 'was not there' : <FigureValue id={mergedId('leaf-then', key)} />}
                  </td>
                  <td className="numeric">
                    {current === null ? 'is gone' : <FigureValue id={mergedId('leaf-now', key)} />}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        {leaves.length > MOST_LEAVES && <p>And {leaves.length - MOST_LEAVES} that moved less.</p>}
      </Section>
    </section>
  );
}
