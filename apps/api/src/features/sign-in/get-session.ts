import { getSession } from '@scantling/contracts';
import { isCurrency } from '@scantling/money';
import { handle } from '../../handle.ts';
import { isDemoSignInAllowed } from '../../sign-in/demo-rule.ts';

export const answerGetSession = handle(getSession, async ({ actor, services, request }) => {
  const { database, config } = services;
  const [workshop, users, demoUsers] = await Promise.all([
    database.workshop.findFirst({ select: { name: true, currency: true, unitSystem: true } }),
    database.user.count(),
    database.user.count({ where: { isDemo: true } }),
  ]);
  const isKnown = actor.kind !== 'visitor';
  return {
    user: actor.kind === 'visitor' ? null : actor,
    // A visitor learns nothing about the workshop.
    workshop:
      isKnown && workshop !== null && isCurrency(workshop.currency)
        ? {
            name: workshop.name,
            currency: workshop.currency,
            unitSystem: workshop.unitSystem === 'imperial' ? ('imperial' as const) : ('metric' as const),
          }
        : null,
    needsSetUp: users === 0,
    canUseDemo: demoUsers > 0 && isDemoSignInAllowed(request, config),
  };
});
