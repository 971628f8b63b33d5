package headgate.runtime.pack;

import java.io.IOException;

/** The instructions of one method (JVM Specification 17, section 6.5): which constants they use, and where. */
final class Instructions {

    static final int LDC = 18;
    static final int PUT_STATIC = 179;
    static final int INVOKE_DYNAMIC = 186;
    static final int MONITOR_ENTER = 194;

    private static final int TABLE_SWITCH = 170;
    private static final int LOOKUP_SWITCH = 171;
    private static final int WIDE = 196;
    private static final int INCREMENT = 132;

    /**
     * Lengths of instructions from 0 to 201, in bytes; 0 for those whose length varies, and for the three that class
     * files from Java 7 on must not have.
     */
    private static final String LENGTHS = "1".repeat(16) // nop to dconst
            + "23233" // bipush, sipush, ldc, ldc_w, ldc2_w
            + "2".repeat(5) // loads
            + "1".repeat(28) // loads with their place in the code, loads from arrays
            + "2".repeat(5) // stores
            + "1".repeat(73) // stores with their place in the code, stores to arrays, stack, arithmetic
            + "3" // iinc
            + "1".repeat(20) // conversions, comparisons
            + "3".repeat(15) // branches, goto
            + "00" // jsr, ret
            + "00" // switches
            + "1".repeat(6) // returns
            + "3".repeat(7) // fields, calls
            + "55323" // invokeinterface, invokedynamic, new, newarray, anewarray
            + "11331104" // arraylength, athrow, checkcast, instanceof, monitors, wide, multianewarray
            + "33" // ifnull, ifnonnull
            + "50"; // goto_w, jsr_w

    /** Is told of each instruction. */
    interface Visitor {
        /**
         * Takes an instruction.
         *
         * @param offset where it begins, bytes
         * @param opcode what it is
         * @param constant the place in the pool that it uses, or 0
         * @throws IOException if it cannot be
         */
        void take(int offset, int opcode, int constant) throws IOException;
    }

    private final byte[] code;

    private Instructions(byte[] code) {
        this.code = code;
    }

    /**
     * Reads all instructions.
     *
     * @param code the method's code
     * @param visitor is told of each, in order
     * @throws IOException if the bytes are no instructions
     */
    static void walk(byte[] code, Visitor visitor) throws IOException {
        Instructions instructions = new Instructions(code);
        int at = 0;
        while (at < code.length) {
            int opcode = code[at] & 0xff;
            int length = instructions.length(at, opcode);
            if (length <= 0 || length > code.length - at) {
                throw new IOException("instruction " + opcode + " at byte " + at + " of a method");
            }
            visitor.take(at, opcode, instructions.constant(at, opcode));
            at += length;
        }
    }

    private int length(int at, int opcode) throws IOException {
        return switch (opcode) {
            case TABLE_SWITCH -> {
                int start = (at & ~3) + 4;
                long cases = (long) four(start + 8) - four(start + 4) + 1;
                yield bounded(start + 12L + 4 * cases - at, cases);
            }
            case LOOKUP_SWITCH -> {
                int start = (at & ~3) + 4;
                long cases = four(start + 4);
                yield bounded(start + 8L + 8 * cases - at, cases);
            }
            case WIDE -> at + 1 < code.length && (code[at + 1] & 0xff) == INCREMENT ? 6 : 4;
            default -> opcode < LENGTHS.length() ? LENGTHS.charAt(opcode) - '0' : 0;
        };
    }

    private static int bounded(long length, long cases) {
        return cases < 0 || length > Integer.MAX_VALUE ? 0 : (int) length;
    }

    private int constant(int at, int opcode) {
        boolean two = opcode == LDC + 1
                || opcode == LDC + 2
                || (opcode >= 178 && opcode <= 187)
                || opcode == 189
                || opcode == 192
                || opcode == 193
                || opcode == 197;
        return opcode == LDC ? one(at + 1) : two ? two(at + 1) : 0;
    }

    private int one(int at) {
        return code[at] & 0xff;
    }

    private int two(int at) {
        return (one(at) << 8) | one(at + 1);
    }

    private int four(int at) throws IOException {
        if (at + 4 > code.length) {
            throw new IOException("a switch that is cut off");
        }
        return (two(at) << 16) | two(at + 2);
    }
}
