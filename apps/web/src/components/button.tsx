import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components';
import './button.css';

export interface ButtonProps extends Omit<AriaButtonProps, 'className' | 'style' | 'children' | 'isPending'> {
  /** `main`: the one act a sheet is there for; `plain`: all others; `quiet`: in rows and heads; `danger`: cannot be undone. */
  readonly look?: 'main' | 'plain' | 'quiet' | 'danger';
  readonly children: React.ReactNode;
  /** Shown instead of the children while the act runs ("Saving ..."); the button keeps its width and focus. */
  readonly pendingText?: string;
  readonly isPending?: boolean;
}

export function Button({ look = 'plain', children, pendingText, isPending = false, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} isPending={isPending} className={`button button-${look}`}>
      <span
        className="button-words"
        data-is-covered={isPending && pendingText !== undefined ? '' : undefined}
      >
        {children}
      </span>
      {isPending && pendingText !== undefined && <span className="button-pending">{pendingText}</span>}
    </AriaButton>
  );
}
