package org.bagwright.domain.plan;

/** Shows a waiting person what the program is doing. */
@FunctionalInterface
public interface WorkProgress {
    /** Shows nothing. */
    WorkProgress NONE = (stage, done, all) -> {};

    /** The stages of the work, in order. */
    enum Stage {
        READING,
        OPTIONS,
        SEARCH,
        REASONS,
        WRITING
    }

    /**
     * Shows the present stage.
     *
     * @param done how many bags are done at this stage
     * @param all of how many; 0 where they are not counted
     */
    void at(Stage stage, int done, int all);
}
