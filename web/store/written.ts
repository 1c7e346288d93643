/**
 * Figures as a job file writes them: kept as the person typed them.
 */

/** A figure as typed: a number, or words such as "3/8", "1 1/2 in", "20 ga steel". */
export type Typed = number | string;

export type Vertex = readonly [x: Typed, y: Typed] | readonly [x: Typed, y: Typed, radius: Typed];
export type Profile = readonly Vertex[];
