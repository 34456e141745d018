package loftcoil.bench;

import loftcoil.runner.cli.CourseBench;

/** All measurements of the runner, one after the other, with the machine they were taken on. */
public final class RunnerBench {

    private RunnerBench() {}

    /**
     * Measures and prints.
     *
     * @param args none
     */
    public static void main(String[] args) throws Exception {
        System.out.printf(
                "Java %s, %d processors, %s %s%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("os.name"),
                System.getProperty("os.arch"));
        SnippetBench.run();
        CourseBench.run();
        PageBench.run();
    }
}
