/** Where the program speaks to: results to `out`, what is said about them to `err`. */
export interface Terminal {
  out(text: string): void;
  /** Without a line break at its end. */
  err(line: string): void;
}

/** What a command ends with; the shell sees it. */
export const exit = {
  /** Nothing wrong; warnings and notes there may be. */
  clean: 0,
  /** At least one error stands against a piece. */
  errors: 1,
  /** Called wrongly, or something could not be read or written. */
  unable: 2,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];
