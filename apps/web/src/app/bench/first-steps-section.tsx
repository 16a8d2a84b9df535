import { Link } from '@tanstack/react-router';
import { Section } from '../../components/sheet.tsx';
import { useMayCall } from '../../lib/use-session.ts';
import type { FirstStep } from './first-steps.ts';
import './bench.css';

export interface StandingStep {
  readonly step: FirstStep;
  readonly isEntered: boolean;
}

function StepAct({ step, isNext }: { readonly step: FirstStep; readonly isNext: boolean }) {
  const mayEnter = useMayCall(step.create);
  if (!mayEnter) return <strong>{step.act}</strong>;
  return (
    <Link to={step.to} {...(isNext ? { className: 'button button-main' } : {})}>
      {step.act}
    </Link>
  );
}

interface FirstStepsSectionProps {
  readonly steps: readonly StandingStep[];
  /** A piece is priced already, and what is missing would make its price truer. */
  readonly hasPrice: boolean;
}

/** The way to a first priced piece, or what is still missing in the prices made so far. */
export function FirstStepsSection({ steps, hasPrice }: FirstStepsSectionProps) {
  const next = steps.find(({ isEntered }) => !isEntered);
  const shown = hasPrice ? steps.filter(({ isEntered }) => !isEntered) : steps;
  return (
    <Section
      title={hasPrice ? 'Not entered yet' : 'To a first priced piece'}
      note={
        hasPrice
          ? 'Prices leave it out until it is.'
          : 'One after the other; each can be changed and added to later.'
      }
    >
      <ol className="first-steps">
        {shown.map(({ step, isEntered }) => (
          <li key={step.term} data-is-entered={isEntered ? '' : undefined}>
            <div>
              <StepAct step={step} isNext={step === next?.step && !hasPrice} />
            </div>
            <span>{step.reason}</span>
            <span className="step-state">{isEntered ? 'entered' : ''}</span>
          </li>
        ))}
      </ol>
    </Section>
  );
}
