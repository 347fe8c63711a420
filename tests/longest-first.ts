import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Begins with the files that take long, so that no worker is left alone with one of them at the end. */
const LONGEST_FIRST = ['proof', 'browser', 'unit'];

export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]) {
    const sorted = await super.sort(files);
    return LONGEST_FIRST.flatMap((name) => sorted.filter(({ project }) => project.name === name));
  }
}
