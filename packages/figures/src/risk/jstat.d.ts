/** What is used of jStat, which brings no types of its own. */
declare module 'jstat' {
  interface Beta {
    /** The value below which a share p of a beta distribution lies. */
    inv(p: number, alpha: number, beta: number): number;
    pdf(x: number, alpha: number, beta: number): number;
  }
  const jstat: { readonly jStat: { readonly beta: Beta; betaln(alpha: number, beta: number): number } };
  export = jstat;
}
