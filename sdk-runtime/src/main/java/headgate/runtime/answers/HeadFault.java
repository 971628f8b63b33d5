package headgate.runtime.answers;

import java.time.Duration;

/**
 * One way in which a head, or its process, did not do what it was asked. Each is a value: two runs that fail in the same
 * way give equal faults.
 */
public sealed interface HeadFault {

    /** {@return what the process was doing} */
    HeadStage stage();

    /** {@return one sentence for a person, without a full stop} */
    String sentence();

    /** {@return false if the head can be asked on: only this one task went without an answer} */
    default boolean ended() {
        return true;
    }

    /**
     * The process did not come up; nothing of the head ran.
     *
     * @param reason what the system said
     */
    record StartFailed(String reason) implements HeadFault {
        @Override
        public HeadStage stage() {
            return HeadStage.START;
        }

        @Override
        public String sentence() {
            return "the head process could not be started: " + reason;
        }
    }

    /**
     * The package loads, but holds no head that can be used.
     *
     * @param reason what is wrong with its extension
     */
    record NoHead(String reason) implements HeadFault {
        @Override
        public HeadStage stage() {
            return HeadStage.LOAD;
        }

        @Override
        public String sentence() {
            return "the package holds no usable head: " + reason;
        }
    }

    /**
     * The head ended its process.
     *
     * @param stage what the process was doing
     * @param code the exit code
     */
    record Exited(HeadStage stage, int code) implements HeadFault {
        @Override
        public String sentence() {
            return "the head ended its process with exit code " + code + " " + stage.phrase();
        }
    }

    /**
     * No answer came in time.
     *
     * @param stage what the process was doing
     * @param limit how long was waited
     */
    record TimedOut(HeadStage stage, Duration limit) implements HeadFault {
        @Override
        public String sentence() {
            return "the head did not answer within " + limit.toMillis() + " ms " + stage.phrase();
        }
    }

    /**
     * Every answer came in time, but all together took too long.
     *
     * @param stage what the process was doing
     * @param tasks how many tasks had been asked
     * @param limit how long the answers to them may take together
     */
    record TooSlow(HeadStage stage, long tasks, Duration limit) implements HeadFault {
        @Override
        public String sentence() {
            return "the head did not answer " + tasks + " tasks within " + limit.toMillis() + " ms in all "
                    + stage.phrase();
        }
    }

    /**
     * The head used more processor time than a head may.
     *
     * @param stage what the process was doing
     * @param limit how much the whole process may use
     */
    record OutOfProcessorTime(HeadStage stage, Duration limit) implements HeadFault {
        @Override
        public String sentence() {
            return "the head used more than " + limit.toSeconds() + " s of processor time " + stage.phrase();
        }
    }

    /**
     * The head used more memory than a head may.
     *
     * @param stage what the process was doing
     */
    record OutOfMemory(HeadStage stage) implements HeadFault {
        @Override
        public String sentence() {
            return "the head used more memory than a head may " + stage.phrase();
        }
    }

    /**
     * The head called itself without end.
     *
     * @param stage what the process was doing
     */
    record StackOverflow(HeadStage stage) implements HeadFault {
        @Override
        public String sentence() {
            return "the head overflowed its stack " + stage.phrase();
        }

        @Override
        public boolean ended() {
            return stage.compareTo(HeadStage.ACT) < 0;
        }
    }

    /**
     * The head threw.
     *
     * @param stage what the process was doing
     * @param type class name of what was thrown
     * @param message its message, at most 500 characters; empty if it has none
     */
    record Threw(HeadStage stage, String type, String message) implements HeadFault {
        @Override
        public String sentence() {
            return "the head threw " + type + (message.isEmpty() ? "" : " (" + message + ")") + " " + stage.phrase();
        }

        @Override
        public boolean ended() {
            return stage.compareTo(HeadStage.ACT) < 0;
        }
    }

    /**
     * The head returned null.
     *
     * @param stage what the process was doing
     */
    record ReturnedNull(HeadStage stage) implements HeadFault {
        @Override
        public String sentence() {
            return "the head returned null " + stage.phrase();
        }

        @Override
        public boolean ended() {
            return stage.compareTo(HeadStage.ACT) < 0;
        }
    }

    /**
     * The head wrote too much to its standard streams.
     *
     * @param stage what the process was doing
     * @param limit bytes that are let through
     */
    record OutputFlood(HeadStage stage, long limit) implements HeadFault {
        @Override
        public String sentence() {
            return "the head wrote more than " + limit + " bytes to its standard streams " + stage.phrase();
        }
    }

    /**
     * The process sent what is no message, or a message out of turn.
     *
     * @param stage what the process was doing
     * @param problem what is wrong with the message
     */
    record BadFrame(HeadStage stage, String problem) implements HeadFault {
        @Override
        public String sentence() {
            return "the head process broke the message format " + stage.phrase() + ": " + problem;
        }
    }

    /**
     * The head started a thread that was still there after the answer.
     *
     * @param stage what the process was doing
     * @param thread name of the thread, at most 100 characters
     */
    record LeftThread(HeadStage stage, String thread) implements HeadFault {
        @Override
        public String sentence() {
            return "the head left a thread named \"" + thread + "\" running " + stage.phrase();
        }
    }

    /**
     * The head was asked for what its kind does not do.
     *
     * @param stage what it was asked
     */
    record WrongKind(HeadStage stage) implements HeadFault {
        @Override
        public String sentence() {
            return stage == HeadStage.ACT
                    ? "the head is no spot head, but was asked for an action"
                    : "the head is no continuous head, but was asked for an engagement";
        }

        @Override
        public boolean ended() {
            return false;
        }
    }

    /**
     * The task is not in the transcript that stands in for the head.
     *
     * @param stage what was asked
     */
    record NotRecorded(HeadStage stage) implements HeadFault {
        @Override
        public String sentence() {
            return "the transcript holds no answer to a task that was asked";
        }

        @Override
        public boolean ended() {
            return false;
        }
    }
}
