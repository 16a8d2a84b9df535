import { ProgressBar } from 'react-aria-components';
import './progress.css';

export interface ProgressProps {
  readonly label: string;
  /** 0 to 100; absent while the whole is unknown. */
  readonly percent?: number;
  /** What has been done, in words ("12,400 of 50,000 rows"). */
  readonly text?: string;
}

export function Progress({ label, percent, text }: ProgressProps) {
  return (
    <ProgressBar
      aria-label={label}
      className="progress"
      isIndeterminate={percent === undefined}
      value={percent ?? 0}
      {...(text === undefined ? {} : { valueLabel: text })}
    >
      {({ percentage, valueText }) => (
        <>
          <span>{label}</span>
          <span className="progress-text">{text ?? (percent === undefined ? '' : valueText)}</span>
          <svg aria-hidden="true" className="progress-line" viewBox="0 0 100 6" preserveAspectRatio="none">
            <path d="M0 3H100" className="progress-whole" />
            <path
              d={`M0 3H${percentage ?? 30}`}
              className="progress-done"
              data-is-moving={percent === undefined ? '' : undefined}
            />
          </svg>
        </>
      )}
    </ProgressBar>
  );
}

/** The pencil line of a sheet that waits for its content; appears only when it takes a while. */
export function Loading({ label = 'Loading' }: { readonly label?: string }) {
  return (
    <div className="loading">
      <Progress label={label} />
    </div>
  );
}
