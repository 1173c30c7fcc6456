import { declareFactoryPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { createMochaTestRunner } from "@stryker-mutator/mocha-runner";

/**
 * Mocha without a process of its own for every change that is reached while the tests are loaded, too: what was worked
 * out then stays as it was, and the tests themselves meet the change. Loading takes twenty times as long as most of them.
 */
function createKeptMocha(injector) {
  const runner = createMochaTestRunner(injector);
  runner.capabilities = () => Promise.resolve({ reloadEnvironment: true });
  return runner;
}
createKeptMocha.inject = createMochaTestRunner.inject;

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, "kept-mocha", createKeptMocha)];
