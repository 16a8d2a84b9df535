import { useState } from 'react';

/** What one row needs to be dragged by its handle and dropped on. */
export interface RowDrag {
  /** The dragged row would come to stand here. */
  readonly isOver: boolean;
  readonly onStart: (event: React.DragEvent) => void;
  readonly onEnd: () => void;
  readonly onOver: (event: React.DragEvent) => void;
  readonly onDrop: (event: React.DragEvent) => void;
}

/** Which row is dragged and where to, within one grid. Keys and acts do the same without a pointer. */
export function useRowDrag(onMove: (from: number, to: number) => void) {
  const [dragged, setDragged] = useState<number | null>(null);
  const [over, setOver] = useState<number | null>(null);
  const end = (): void => {
    setDragged(null);
    setOver(null);
  };
  return {
    of: (index: number): RowDrag => ({
      isOver: dragged !== null && over === index && dragged !== index,
      onStart: (event) => {
        event.dataTransfer.effectAllowed = 'move';
        // Without data some browsers drag nothing.
        event.dataTransfer.setData('text/plain', '');
        setDragged(index);
      },
      onEnd: end,
      onOver: (event) => {
        // What is dragged in from elsewhere is no row of this grid.
        if (dragged === null) return;
        event.preventDefault();
        setOver(index);
      },
      onDrop: (event) => {
        if (dragged === null) return;
        event.preventDefault();
        onMove(dragged, index);
        end();
      },
    }),
  };
}
