/**
 * A message about a field as a sentence. The API words messages as what follows the field's name ("is missing");
 * a message that starts with a capital or a quote stands by itself.
 */
export function sentence(subject: string, message: string): string {
  const whole = /^(?:\(line \d+\) )?\p{Ll}/u.test(message) ? `${subject} ${message}` : message;
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}
