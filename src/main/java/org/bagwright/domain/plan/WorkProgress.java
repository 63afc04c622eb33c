package org.bagwright.domain.plan;

/** Told what the program is at, for a person who waits. */
@FunctionalInterface
public interface WorkProgress {
    /** For no one. */
    WorkProgress NONE = (stage, done, all) -> {};

    /** What is done one after another. */
    enum Stage {
        READING,
        OPTIONS,
        SEARCH,
        REASONS,
        WRITING
    }

    /**
     * What is done now.
     *
     * @param done how many bags are done at this stage
     * @param all of how many; 0 where they are not counted
     */
    void at(Stage stage, int done, int all);
}
