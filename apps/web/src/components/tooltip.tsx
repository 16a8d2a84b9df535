import { Tooltip as AriaTooltip, Focusable, TooltipTrigger } from 'react-aria-components';
import './tooltip.css';

export interface TooltipProps {
  /** A word of explanation; nothing that is needed to work, since touch does not show it. */
  readonly text: string;
  /** One control that can take the focus. */
  readonly children: React.ComponentProps<typeof Focusable>['children'];
}

export function Tooltip({ text, children }: TooltipProps) {
  return (
    <TooltipTrigger delay={500}>
      <Focusable>{children}</Focusable>
      <AriaTooltip className="tooltip" offset={6}>
        {text}
      </AriaTooltip>
    </TooltipTrigger>
  );
}
