// A line for each file of tests, and the failures at the end: for logs, where nothing can be drawn over.
import { DefaultReporter } from 'vitest/node';
import type { TestModule } from 'vitest/node';

export default class PlainReporter extends DefaultReporter {
  private ended = 0;

  constructor() {
    super({ summary: false });
  }

  override onTestModuleEnd(module: TestModule): void {
    const tests = [...module.children.allTests()];
    const failed = tests.filter((test) => test.result().state === 'failed').length;
    const seconds = (module.diagnostic().duration / 1000).toFixed(1);
    const count = failed > 0 ? `${failed} of ${tests.length} FAILED` : `${tests.length} tests`;
    console.log(`${++this.ended}. ${module.relativeModuleId}: ${count}, ${seconds} s`);
  }

  /** Only whole files are told of. */
  override onTestCaseResult(): void {}
}
