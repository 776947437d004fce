import { followerEdgeRoom } from "../../valves/followerEdgeRoom.ts";

export const inletFollowerEdgeRoom = followerEdgeRoom("inlet", "3.77 mm");
