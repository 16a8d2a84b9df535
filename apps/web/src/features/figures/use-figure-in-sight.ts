import { type RefObject, useCallback, useEffect, useRef } from 'react';

/** The button of a figure inside of a part of the page, where it stands there. */
function buttonOf(content: HTMLElement | null, id: string | null): HTMLElement | null {
  return id === null
    ? null
    : (content?.querySelector<HTMLElement>(`[data-figure="${CSS.escape(id)}"]`) ?? null);
}

/**
 * Brings the figure an address was opened with into sight, once, as soon as it is drawn. Figures chosen on the page are
 * in sight already and stay where they are.
 * @returns finds the button of the figure shown last
 */
export function useFigureInSight(
  content: RefObject<HTMLElement | null>,
  id: string | null,
): () => HTMLElement | null {
  const last = useRef(id);
  const isToBeShown = useRef(id !== null);
  if (id !== last.current) {
    last.current = id ?? last.current;
    isToBeShown.current = false;
  }
  // Without dependencies: the figure may be drawn long after the address was read, when its answer has come.
  useEffect(() => {
    if (!isToBeShown.current) return;
    const button = buttonOf(content.current, id);
    if (button === null) return;
    isToBeShown.current = false;
    button.scrollIntoView({ block: 'center', inline: 'nearest' });
  });
  return useCallback(() => buttonOf(content.current, last.current), [content]);
}
