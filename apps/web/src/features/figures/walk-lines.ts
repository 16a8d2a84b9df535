/** Up and down walk the lines of a working; left goes to the line it stands under. */
export function walkLines(event: React.KeyboardEvent<HTMLElement>): void {
  if (!(event.target instanceof HTMLElement)) return;
  const lines = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-working-line]')];
  const at = lines.indexOf(event.target);
  if (at < 0) return;
  const above = event.target
    .closest('.working-inner')
    ?.parentElement?.querySelector<HTMLElement>('[data-working-line]');
  const next =
    event.key === 'ArrowDown'
      ? lines[at + 1]
      : event.key === 'ArrowUp'
        ? lines[at - 1]
        : event.key === 'ArrowLeft'
          ? above
          : undefined;
  if (!next) return;
  event.preventDefault();
  next.focus();
}
