const DATE_AT_END = /\/\d{4}-\d{2}-\d{2}$/;

/** A leaf whose key ends with the day it is of (an exchange rate) is the same leaf on another day. */
export function undatedKey(key: string): string {
  return key.replace(DATE_AT_END, '');
}
