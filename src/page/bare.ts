/** The bench with what questions cover: for who judges a guess, or keeps numbers that nobody sees. */
import type { Bench } from './bench';

export const bareOf = (bench: Bench): Bench => bench.asked.value?.bare ?? bench;
