import { isRole, ROLE_MEANINGS, ROLES, type Role } from '@scantling/contracts';
import { type CellSpec, type FormValues, textOf } from './field-spec.ts';

/** What somebody or a program may do. */
export const ROLE_FIELD: CellSpec = {
  name: 'role',
  label: 'Role',
  kind: 'choice',
  choices: ROLES.map((id) => ({ id, label: id, note: ROLE_MEANINGS[id] })),
};

/** The chosen role; the least where none is chosen. */
export function roleOf(values: FormValues): Role {
  const role = textOf(values, 'role');
  return isRole(role) ? role : 'read-only';
}
