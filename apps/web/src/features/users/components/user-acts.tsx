import { isRole, ROLES, type User } from '@scantling/contracts';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { Select } from '../../../components/select.tsx';
import { notify } from '../../../components/toast.tsx';
import { useChangeRole } from '../api/change-role.ts';
import { useRemoveUser } from '../api/remove-user.ts';
import './users.css';

/** The role of a user, changed at once; a refusal is said beside it. */
export function RoleChoice({ user }: { readonly user: User }) {
  const change = useChangeRole();
  return (
    <div className="role-choice">
      <Select
        label={`Role of ${user.name}`}
        isLabelHidden
        choices={ROLES.map((id) => ({ id, label: id }))}
        value={user.role}
        isDisabled={change.isPending}
        error={change.isError ? { message: change.error.message } : undefined}
        onChange={(role) => {
          if (!isRole(role) || role === user.role) return;
          change.mutate({ id: user.id, role }, { onSuccess: () => notify(`${user.name} is ${role} now`) });
        }}
      />
    </div>
  );
}

/** Ends a user's access, after a question. */
export function RemoveUser({ user }: { readonly user: User }) {
  const remove = useRemoveUser(user.id);
  return (
    <RemoveAct
      title={`Remove ${user.name}?`}
      consequence="Their sessions end and the API tokens they made are revoked. What they entered stays."
      isPending={remove.isPending}
      error={remove.error}
      onRemove={() =>
        remove.mutate(undefined, { onSuccess: () => notify(`${user.name} can no longer sign in`) })
      }
    />
  );
}
