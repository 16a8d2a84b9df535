import { decimal } from '@scantling/decimals';
import { undatedKey } from './leaf-key.ts';
import type { FigureNode, FigureTable } from './table.ts';

/** A leaf that is not the same in two tables. */
export interface LeafChange {
  readonly kind: 'changed' | 'added' | 'gone';
  /** The leaf's key. */
  readonly key: string;
  /** As it was; absent where it was added. */
  readonly old?: FigureNode;
  /** As it is now; absent where it is gone. */
  readonly now?: FigureNode;
}

/** Leaves by key; one whose key ends with the day it is of (an exchange rate) is the same leaf on another day. */
function leavesOf(table: FigureTable): Map<string, FigureNode> {
  const found = new Map<string, FigureNode>();
  for (const node of Object.values(table))
    if (node.source !== undefined) found.set(undatedKey(node.id), node);
  return found;
}

function isSame(old: FigureNode, now: FigureNode): boolean {
  return old.unit === now.unit && old.currency === now.currency && decimal(old.value).eq(decimal(now.value));
}

/**
 * What has moved between two tables worked out from the same kind of input, leaf by leaf: values that changed, leaves
 * that came and leaves that went, in the order of their keys. A leaf whose source alone changed has not moved.
 */
export function compareLeaves(old: FigureTable, now: FigureTable): LeafChange[] {
  const [before, after] = [leavesOf(old), leavesOf(now)];
  const keys = [...new Set([...before.keys(), ...after.keys()])].sort();
  return keys.flatMap((key): LeafChange[] => {
    const [was, is] = [before.get(key), after.get(key)];
    if (was === undefined) return is === undefined ? [] : [{ kind: 'added', key, now: is }];
    if (is === undefined) return [{ kind: 'gone', key, old: was }];
    return isSame(was, is) ? [] : [{ kind: 'changed', key, old: was, now: is }];
  });
}
