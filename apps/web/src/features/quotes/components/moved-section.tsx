import type { QuoteToday } from '@scantling/contracts';
import { Section } from '../../../components/sheet.tsx';
import { CostDifference } from '../../cost-difference/cost-difference.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import './quote.css';

const inToday = (id: string): string => mergedId('today', id);

/** What has moved since it was sent and why, the most money first, and what it leaves now. */
export function MovedSection({ today }: { readonly today: QuoteToday }) {
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
        <CostDifference
          difference={today.difference}
          named={inToday}
          was={`When sent, ${today.sentOn}`}
          now="Today"
        />
      </Section>
    </section>
  );
}
