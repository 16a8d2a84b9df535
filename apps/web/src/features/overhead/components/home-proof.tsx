import { HOMES } from '@scantling/costing';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { OverheadRecovery } from '../api/get-overhead-recovery.ts';
import { HOME_WORDS } from './overhead-words.ts';
import './overhead.css';

/** Whether each amount comes back exactly once, as a sum that can be read down, and what breaks it. */
export function HomeProof({ proof }: Pick<OverheadRecovery, 'proof'>) {
  return (
    <>
      <p className={proof.holds ? 'proof-holds' : 'proof-fails'}>
        {proof.holds
          ? 'Each amount comes back exactly once.'
          : 'Not every amount comes back exactly once; see what to mend below.'}
      </p>
      <dl className="proof-sum">
        <div>
          <dt>All yearly amounts</dt>
          <dd>
            <FigureValue id={proof.total} look="total" places={2} />
          </dd>
        </div>
        {HOMES.map((home) => (
          <div key={home}>
            <dt>less {HOME_WORDS[home].toLowerCase()}</dt>
            <dd>
              <FigureValue id={proof.homes[home]} places={2} />
            </dd>
          </div>
        ))}
        <div>
          <dt>leaves</dt>
          <dd>
            <FigureValue id={proof.rest} look="total" places={2} />
          </dd>
        </div>
      </dl>
      {proof.findings.length > 0 && (
        <ul className="proof-findings">
          {proof.findings.map((finding) => (
            <li key={`${finding.kind} ${finding.about}`}>{finding.message}</li>
          ))}
        </ul>
      )}
    </>
  );
}
