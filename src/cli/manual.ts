/**
 * The parts of `--help` that say more than a list of options: what the program answers, an example, exit status.
 * README.md carries the same example.
 */
import { CAUTIONS } from "../drawing/cautions.ts";

export const PURPOSE =
  "Can this sheet-metal part be folded on this hand leaf brake, in which order and which way round, and where does it hit if not?";

export const MANUAL = `
EXAMPLE
  noseroom example                        list the ready jobs
  noseroom example cable-trough-bar       write cable-trough-bar.json
  noseroom check cable-trough-bar.json    answer it
  noseroom check cable-trough-bar.json --svg pictures
                                          the same, and draw every step
  noseroom blank cable-trough-bar.json    where to scribe the lines

THE JOB FILE
  JSON with units, part, brake and, if you like, an order and a margin. A length may be a number, "3/8",
  "1 1/2", "5 mm" or "1/4 in"; a thickness also a gauge with its family, "20 ga steel". A slip in the file is
  answered with the key, what was found there and what may stand there.

EXIT STATUS
  0    it folds, with room to spare or tight
  1    it does not fold
  2    the job or the command line cannot be worked with; standard error says why, standard output is empty
  130  stopped with Ctrl-C

ENVIRONMENT
  NO_COLOR  set to anything: no colour on a terminal either

${CAUTIONS}
`;
