package headgate.verifier.replay;

import headgate.api.shape.Point;
import headgate.api.vocabulary.PlantClass;
import headgate.verifier.replay.Chance.Draw;

/** What an action does to what stands there: the plants that it treats, and the crop that it meets. */
final class Effects {

    private final ReplaySetting setting;
    private final Course course;
    private final Tally tally;
    private final Chance chance;

    Effects(ReplaySetting setting, Course course, Tally tally) {
        this.setting = setting;
        this.course = course;
        this.tally = tally;
        this.chance = new Chance(setting.seed());
    }

    /** Marks what an action treats: its own plant, and every other one in the ground that it treats. */
    int treat(ArmState arm, Target own, HeadAction action, double start) {
        take(own, false);
        int treated = own.nature == Target.Nature.WANTED ? 1 : 0;
        for (HeadAction.Leg leg : action.legs()) {
            if (leg.treated() == null) {
                continue;
            }
            int sign = -arm.arm.facing().sign();
            double atX = arm.arm.mountX()
                    + course.perSecond() * (start + leg.end())
                    + sign * leg.to().x();
            double atY = arm.mount + sign * leg.to().y();
            long half = leg.halfTreated();
            course.readTo(atX + half);
            Passing passing = course.passing();
            for (int i = passing.from(atX - half); i < passing.size(); i++) {
                Target other = passing.get(i);
                if (other.x > atX + half) {
                    break;
                }
                if (other != own && !other.treated && inside(leg, sign, other.x - atX, other.y - atY)) {
                    if (other.nature == Target.Nature.WANTED && !other.taken) {
                        take(other, true);
                        treated++;
                    } else if (other.isCrop()) {
                        other.lost = true;
                    }
                }
            }
        }
        return treated;
    }

    private static boolean inside(HeadAction.Leg leg, int sign, double dx, double dy) {
        return leg.treated() != null && leg.treated().contains(new Point(Math.round(sign * dx), Math.round(sign * dy)));
    }

    private void take(Target target, boolean alongside) {
        target.taken = true;
        switch (target.nature) {
            case WANTED -> {
                target.treated = true;
                target.alongside = alongside;
                boolean works = chance.happens(setting.success().of(target.kind), target.number, Draw.SUCCESS);
                if (target.kind.equals(PlantClass.PLUG)) {
                    works &= tally.established(target, setting.plugs(), chance);
                }
                target.successful = works;
            }
            case CROP_TAKEN -> {
                target.lost = true;
                tally.falseActions++;
            }
            default -> tally.falseActions++;
        }
    }

    /** Counts what an action does to the crop, and to plugs that stand already. */
    void sweep(ArmState arm, Target own, HeadAction action, double start) {
        CropSweep sweep = arm.sweep;
        if (sweep == null) {
            return;
        }
        double mountX = arm.arm.mountX() + course.perSecond() * start;
        double[] extent = sweep.extent(action);
        double last = mountX + extent[1] + CropSweep.WIDEST;
        course.readTo(last);
        Passing passing = course.passing();
        for (int i = passing.from(mountX + extent[0] - CropSweep.WIDEST); i < passing.size(); i++) {
            Target plant = passing.get(i);
            if (plant.x > last) {
                return;
            }
            if (plant == own || plant.lost || !plant.stands()) {
                continue;
            }
            CropSweep.Meeting meeting = sweep.meeting(action, plant, mountX, (double) arm.mount);
            plant.lost |= meeting == CropSweep.Meeting.PLANT;
            plant.touched |= meeting == CropSweep.Meeting.LEAVES;
        }
    }
}
